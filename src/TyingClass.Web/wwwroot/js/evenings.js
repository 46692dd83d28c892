// Arrow keys turn the steps on the wall; a live part of a page is looked at again every two seconds. Both have links that do the same.
(function () {
  "use strict";

  document.addEventListener("keydown", function (event) {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.target.closest("input, textarea, select")) return;
    var link = document.querySelector('[data-key~="' + event.key + '"]');
    if (!link) return;
    event.preventDefault();
    link.click();
  });

  var live = document.querySelector("[data-live]");
  if (!live) return;

  function look() {
    if (document.hidden) return;
    fetch(location.href, { credentials: "same-origin" })
      .then(function (response) { return response.ok ? response.text() : Promise.reject(); })
      .then(function (text) {
        var fresh = new DOMParser().parseFromString(text, "text/html").querySelector("[data-live]");
        // Another question, or an answer revealed: the page around it is another one too.
        if (!fresh || fresh.dataset.liveState !== live.dataset.liveState) location.reload();
        else if (fresh.innerHTML !== live.innerHTML) live.innerHTML = fresh.innerHTML;
      })
      .catch(function () { /* The server is away: the next look may find it. */ });
  }

  setInterval(look, 2000);
})();
