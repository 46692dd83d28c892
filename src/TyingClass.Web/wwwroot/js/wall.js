// Steps through the drawings by keys: a presenter's clicker sends page up and page down.
document.addEventListener("keydown", event => {
  if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
  const rel = { ArrowRight: "next", PageDown: "next", ArrowLeft: "prev", PageUp: "prev", Escape: "up" }[event.key];
  const link = rel && document.querySelector(`a[rel="${rel}"]`);
  if (!link) return;
  event.preventDefault();
  link.click();
});
