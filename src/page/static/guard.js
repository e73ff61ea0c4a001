// Says in a plain sentence why there is no page, where there is none: without WebAssembly, with a file
// that is missing or damaged, with a policy that forbids it, in a frame of another page, and when the
// program has stopped for a fault of its own. It needs nothing of the program.
(() => {
  "use strict";
  const say = (sentence) => {
    const show = () => {
      const place = document.getElementById("stopped");
      if (!place || !place.hidden) return;
      place.querySelector("p").textContent = sentence;
      place.hidden = false;
      document.getElementById("waiting")?.remove();
      document.getElementById("stopped-reload").onclick = () => location.reload();
      document.getElementById("stopped-export").onclick = exportSaved;
    };
    if (document.readyState === "loading") addEventListener("DOMContentLoaded", show);
    else show();
  };
  const started = () => (document.getElementById("page")?.childElementCount ?? 0) > 0;

  // The same file that the page itself exports.
  const exportSaved = () => {
    const entries = [];
    const others = [];
    try {
      for (let at = 0; at < localStorage.length; at++) {
        const name = localStorage.key(at);
        if (!/^kb\d+\/|^kettle-and-barrel saved/.test(name)) continue;
        const text = localStorage.getItem(name);
        try {
          if (!name.startsWith("kb2/")) throw name;
          entries.push(JSON.stringify(JSON.parse(text)));
        } catch {
          others.push([name, text]);
        }
      }
    } catch {
      // Nothing may be read: the file then says that there is nothing.
    }
    const text = `{"format":"kettle-and-barrel saved","version":2,"entries":[\n${entries.join(",\n")}\n],\n"others":${JSON.stringify(others)}}\n`;
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = "kettle-and-barrel.json";
    link.click();
  };

  const faulty = (event) => {
    const fault = event.reason ?? event.error;
    if (started()) {
      // Only the program itself can stop the page; what a browser's own additions do is not its business.
      if (fault instanceof WebAssembly.RuntimeError) say("This page has stopped for a fault of its own.");
      return;
    }
    const refused = /Content Security Policy|disallowed by embedder|unsafe-eval/i.test(String(fault?.message));
    say(refused
      ? "A rule of this browser or of your network forbids WebAssembly, with which this page computes. Allow it for this page, or open it in another browser."
      : "A file of this page is missing or damaged. Load the page anew; if that does not help, it was not copied whole to where it came from.");
  };

  if (self !== top) {
    document.documentElement.classList.add("framed");
    say("This page does not run inside another page. Open it by itself.");
  } else if (typeof WebAssembly !== "object") {
    say("This browser has no WebAssembly, with which this page computes, or it is switched off. Switch it on, or open the page in another browser.");
  } else {
    // Files that do not load tell only the element that asked for them.
    addEventListener("error", faulty, true);
    addEventListener("unhandledrejection", faulty);
    addEventListener("kettle-and-barrel-stopped", () => say("This page has stopped for a fault of its own."));
  }
})();
