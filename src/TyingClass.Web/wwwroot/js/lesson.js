// Whoever has just answered sees at once what was found. Without scripting it is a tap away.
function openFound() {
  document.getElementById(location.hash.slice(1))?.querySelector(".found")?.setAttribute("open", "");
}
openFound();
addEventListener("hashchange", openFound);
