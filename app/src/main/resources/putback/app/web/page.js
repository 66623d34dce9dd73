// Shows the plan below the form as soon as something is ticked. Without this file the button does the same.
(() => {
  "use strict";
  const form = document.getElementById("choose");
  const live = document.getElementById("live");
  const said = document.getElementById("picked");
  if (!form || !live || !said) {
    return;
  }
  let running = null;

  const ticked = () => [...form.querySelectorAll("input[name=renew]:checked")];

  const refresh = async () => {
    if (running) {
      running.abort();
    }
    const mine = new AbortController();
    running = mine;
    const asked = new URLSearchParams(new FormData(form));
    if (!asked.has("renew")) {
      live.replaceChildren();
      said.textContent = "";
      return;
    }
    const names = ticked().map((box) => box.closest("label").textContent.trim());
    said.textContent = names.join(", ") + ": planning …";
    try {
      const answer = await fetch("/plan-part?" + asked, { signal: mine.signal });
      const text = await answer.text();
      if (mine.signal.aborted) {
        return;
      }
      live.innerHTML = text;
      const part = live.firstElementChild;
      said.textContent = part ? part.dataset.said || "" : "";
    } catch (fault) {
      if (!mine.signal.aborted) {
        said.textContent = "The plan cannot be had just now. Is the program still running?";
      }
    }
  };

  form.addEventListener("change", refresh);
  form.addEventListener("submit", (event) => {
    if (!ticked().length) {
      event.preventDefault();
      said.textContent = "Tick what is to be renewed first.";
      form.querySelector("input[name=renew]").focus();
    }
  });
  if (ticked().length) {
    refresh();
  }
})();

// Answers the Tightening page while one types. Without this file the button does the same.
(() => {
  "use strict";
  const form = document.getElementById("ask");
  const place = document.getElementById("tight");
  const heard = document.getElementById("heard");
  if (!form || !place || !heard) {
    return;
  }
  const PAUSE = 150;
  let running = null;
  let waiting = 0;

  const mark = (part) => {
    const wrong = part ? part.dataset.field : "";
    for (const input of form.elements) {
      if (input.name && input.name === wrong) {
        input.setAttribute("aria-invalid", "true");
        input.closest("details")?.setAttribute("open", "");
      } else {
        input.removeAttribute("aria-invalid");
      }
    }
  };

  const ask = async () => {
    if (running) {
      running.abort();
    }
    const mine = new AbortController();
    running = mine;
    const given = new URLSearchParams(new FormData(form));
    for (const [name, value] of [...given]) {
      if (!value.trim()) {
        given.delete(name);
      }
    }
    try {
      const answer = await fetch("/tightening-part?" + given, { signal: mine.signal });
      const text = await answer.text();
      if (mine.signal.aborted) {
        return;
      }
      place.innerHTML = text;
      heard.textContent = "";
      mark(place.firstElementChild);
      history.replaceState(null, "", "/tightening" + (given.size ? "?" + given : ""));
    } catch (fault) {
      if (!mine.signal.aborted) {
        heard.textContent = "No answer just now. Is the program still running?";
      }
    }
  };

  form.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(ask, PAUSE);
  });
  mark(place.firstElementChild);
})();

// Reckons the price anew as terms are typed and parts ticked. Without this file the button does the same.
(() => {
  "use strict";
  const form = document.getElementById("price");
  const place = document.getElementById("priced");
  const said = document.getElementById("reckoned");
  if (!form || !place || !said) {
    return;
  }
  const PAUSE = 120;
  let running = null;
  let waiting = 0;

  const reckon = async () => {
    if (running) {
      running.abort();
    }
    const mine = new AbortController();
    running = mine;
    const given = new URLSearchParams(new FormData(form));
    if (!given.has("renew")) {
      said.textContent = "Tick at least one thing to renew.";
      return;
    }
    for (const [name, value] of [...given]) {
      if (!value.trim()) {
        given.delete(name);
      }
    }
    const active = document.activeElement;
    const open = place.querySelector("details.grades")?.open;
    const show = async (query) => {
      const answer = await fetch("/price-part?" + query, { signal: mine.signal });
      const text = await answer.text();
      if (mine.signal.aborted) {
        return;
      }
      place.innerHTML = text;
      said.textContent = "";
      const part = place.firstElementChild;
      const wrong = part ? part.dataset.field : "";
      for (const input of form.elements) {
        if (input.name && input.name === wrong) {
          input.setAttribute("aria-invalid", "true");
        } else {
          input.removeAttribute("aria-invalid");
        }
      }
      if (open) {
        place.querySelector("details.grades")?.setAttribute("open", "");
      }
      if (active?.name?.startsWith("rust.")) {
        place.querySelector('select[name="' + CSS.escape(active.name) + '"]')?.focus({ preventScroll: true });
      }
      if (active && active.name === "renew") {
        const again = place.querySelector('input[name=renew][value="' + CSS.escape(active.value) + '"]');
        if (again) {
          again.focus({ preventScroll: true });
        }
      }
    };
    try {
      await show(given + "&alongside=later");
      await show(String(given));
      if (mine.signal.aborted) {
        return;
      }
      history.replaceState(null, "", "/price?" + given);
    } catch (fault) {
      if (!mine.signal.aborted) {
        said.textContent = "No answer just now. Is the program still running?";
      }
    }
  };

  form.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(reckon, PAUSE);
  });
})();

// Answers the pages of wheel angles and of a corner while one types or slides. Without this file the button does the same.
(() => {
  "use strict";
  const form = document.querySelector("form[data-live]");
  const place = document.querySelector("[data-answer]");
  const heard = document.querySelector("[data-heard]");
  if (!form || !place || !heard) {
    return;
  }
  const PAUSE = 80;
  let running = null;
  let waiting = 0;

  /** Says what is wrong with a field at the field too, and shows what is folded around it. */
  const mark = () => {
    const wrong = new Map();
    for (const one of place.querySelectorAll("[data-field]")) {
      if (!wrong.has(one.dataset.field)) {
        wrong.set(one.dataset.field, one.dataset.said);
      }
    }
    for (const old of form.querySelectorAll("small.wrong")) {
      old.remove();
    }
    for (const input of form.elements) {
      const said = input.name ? wrong.get(input.name) : undefined;
      if (said === undefined) {
        input.removeAttribute("aria-invalid");
        continue;
      }
      input.setAttribute("aria-invalid", "true");
      input.closest("details")?.setAttribute("open", "");
      const small = document.createElement("small");
      small.className = "wrong";
      small.textContent = said;
      (input.closest("label") ?? input).append(small);
    }
  };

  const ask = async () => {
    if (running) {
      running.abort();
    }
    const mine = new AbortController();
    running = mine;
    try {
      const body = new URLSearchParams(new FormData(form));
      const answer = await fetch(form.dataset.live, { method: "POST", body, signal: mine.signal });
      const text = await answer.text();
      if (!mine.signal.aborted) {
        place.innerHTML = text;
        heard.textContent = "";
        mark();
      }
    } catch (fault) {
      if (!mine.signal.aborted) {
        heard.textContent = "No answer just now. Is the program still running?";
      }
    }
  };

  form.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(ask, PAUSE);
  });
})();

// Copies what stands beside a button. Without this file the text is marked and copied by hand.
(() => {
  "use strict";
  for (const button of document.querySelectorAll("button[data-copy]")) {
    if (!navigator.clipboard) {
      continue;
    }
    button.hidden = false;
    button.addEventListener("click", async () => {
      try {
        await navigator.clipboard.writeText(document.getElementById(button.dataset.copy).textContent);
        button.textContent = "Copied";
      } catch {
        button.textContent = "Not copied: mark it and copy by hand";
      }
    });
  }
})();
