// Registers the service worker, and tells when a new version is ready. The page never reloads by
// itself: somebody may be in the middle of a figure.
if ("serviceWorker" in navigator) {
  const notice = document.getElementById("new-version");
  navigator.serviceWorker.register("service-worker.js").then((registration) => {
    const tell = () => {
      if (!registration.waiting || !navigator.serviceWorker.controller) return;
      notice.hidden = false;
      notice.querySelector("button").onclick = () => {
        navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
        registration.waiting.postMessage("take over");
      };
    };
    tell();
    registration.addEventListener("updatefound", () => registration.installing.addEventListener("statechange", tell));
  });
}
