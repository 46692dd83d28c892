// Shows or hides a passphrase in place; without this file the page does the same by being sent once.
for (const button of document.querySelectorAll("[data-show]")) {
  button.addEventListener("click", event => {
    event.preventDefault();
    const show = button.value === "true";
    for (const field of button.form.querySelectorAll("[data-passphrase]")) {
      field.type = show ? "text" : "password";
      field.autocomplete = show ? "off" : field.dataset.passphrase;
    }
    button.form.elements.shown.value = String(show);
    button.value = String(!show);
    button.textContent = show ? "Hide what I type" : "Show what I type";
  });
}
