// While an answer is worked out its button says so and cannot be pressed twice. Without scripting the form goes as it is, and the server takes it once.
(() => {
  const words = "Working it out…", patience = 30000;

  const say = (form, text) => {
    const said = form.querySelector("[data-sending]");
    if (said) said.textContent = text;
  };

  const release = (form, button) => {
    if (!form.dataset.sent) return;
    button.textContent = form.dataset.sent;
    button.removeAttribute("aria-disabled");
    say(form, "");
    delete form.dataset.sent;
  };

  document.addEventListener("submit", event => {
    const form = event.target, button = event.submitter;
    if (!form.matches("form.answer") || !button || button.value !== "submit") return;
    if (form.dataset.sent) return event.preventDefault();
    form.dataset.sent = button.textContent;
    button.setAttribute("aria-disabled", "true");
    button.textContent = words;
    say(form, words);
    // Stopped by hand, or the line is dead: it can be sent again, and nothing that was typed is lost.
    setTimeout(release, patience, form, button);
  });

  // So it can on coming back to a page that the browser kept.
  addEventListener("pageshow", () => {
    for (const form of document.querySelectorAll("form.answer[data-sent]")) release(form, form.querySelector("button[value=submit]"));
  });
})();
