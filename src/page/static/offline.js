// Registers the service worker, and tells when a new version is ready. The page never reloads by
// itself: somebody may be in the middle of a figure.
if ("serviceWorker" in navigator && self === top) {
  const notice = document.getElementById("new-version");
  navigator.serviceWorker.register("service-worker.js").then((registration) => {
    const tell = () => {
      if (!registration.waiting || !navigator.serviceWorker.controller) return;
      notice.hidden = false;
    };
    notice.querySelector("button").onclick = () => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
      // Another window may have loaded it meanwhile.
      if (registration.waiting) registration.waiting.postMessage("take over");
      else location.reload();
    };
    tell();
    registration.addEventListener("updatefound", () => registration.installing.addEventListener("statechange", tell));
    // A page that stays open for days asks again when it is looked at, once an hour at most.
    let asked = Date.now();
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState !== "visible" || Math.abs(Date.now() - asked) < 3600000) return;
      asked = Date.now();
      registration.update().catch(() => {});
    });
  }).catch(() => {
    // Where a browser keeps nothing, the page needs its host on each visit.
  });
}
