// Registers the service worker, and tells when a new version is ready. The page never reloads by
// itself: somebody may be in the middle of a figure.
if ("serviceWorker" in navigator && self === top) {
  const notice = document.getElementById("new-version");
  let pause = 5000;
  // The first keeping can break off where the network is poor, and this visit may be the last one
  // with a network: it is tried again, each time after twice as long.
  const again = () => {
    setTimeout(keep, pause);
    pause *= 2;
  };
  const keep = () => navigator.serviceWorker.register("service-worker.js").then((registration) => {
    const tell = () => {
      if (!registration.waiting || !navigator.serviceWorker.controller) return;
      notice.hidden = false;
    };
    const follow = (worker) => worker?.addEventListener("statechange", () => {
      tell();
      if (worker.state === "redundant" && !registration.active) again();
    });
    notice.querySelector("button").onclick = () => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
      // Another window may have loaded it meanwhile.
      if (registration.waiting) registration.waiting.postMessage("take over");
      else location.reload();
    };
    tell();
    follow(registration.installing);
    registration.onupdatefound = () => follow(registration.installing);
    // A page that stays open for days asks again when it is looked at, once an hour at most.
    let asked = Date.now();
    document.onvisibilitychange = () => {
      if (document.visibilityState !== "visible" || Math.abs(Date.now() - asked) < 3600000) return;
      asked = Date.now();
      registration.update().catch(() => {});
    };
  }).catch((problem) => {
    // Where a browser keeps nothing, the page needs its host on each visit; only a network comes back.
    if (problem instanceof TypeError) again();
  });
  keep();
}
