// Keeps what is typed into a form on this device until the garage says that it has it, so that nothing typed is lost
// with the connection. Without this file only the browser's own way back restores it.
(() => {
  "use strict";
  const START = "putback-typed ";
  const DAYS_MS = 2 * 24 * 3600 * 1000;
  const ANSWERED = "putback-has=";

  const forms = [...document.querySelectorAll("main form[method=post]")].filter(
    (form) => form.enctype !== "multipart/form-data" && !form.dataset.live && !form.querySelector("input[type=password]"));

  const slot = (form) => {
    const to = form.getAttribute("action") ?? location.pathname;
    const same = forms.filter((other) => (other.getAttribute("action") ?? location.pathname) === to);
    return START + to + " " + same.indexOf(form);
  };

  /** Fields by their names; of several with one name, each by its place among them. */
  const fields = (form) => {
    const all = new Map();
    for (const field of form.elements) {
      if (!field.name || field.type === "hidden" || field.type === "submit" || field.type === "button") continue;
      let name = field.name;
      for (let i = 2; all.has(name); i++) name = field.name + " " + i;
      all.set(name, field);
    }
    return all;
  };

  const isTick = (field) => field.type === "checkbox" || field.type === "radio";
  const now = (field) => (isTick(field) ? String(field.checked) : field.value);
  const first = (field) => {
    if (isTick(field)) return String(field.defaultChecked);
    if (field.tagName !== "SELECT") return field.defaultValue;
    const chosen = [...field.options].find((option) => option.defaultSelected) ?? field.options[0];
    return chosen ? chosen.value : "";
  };

  const kept = (name) => {
    try {
      const all = JSON.parse(localStorage.getItem(name));
      return all && Date.now() - all.at < DAYS_MS ? all : null;
    } catch {
      return null;
    }
  };

  const keep = (form, id) => {
    const values = {};
    for (const [name, field] of fields(form)) {
      if (now(field) !== first(field)) values[name] = { was: first(field), typed: now(field) };
    }
    try {
      if (Object.keys(values).length === 0) localStorage.removeItem(slot(form));
      else localStorage.setItem(slot(form), JSON.stringify({ id, at: Date.now(), values }));
    } catch {
      // A full device, or one that keeps nothing: then as without this file.
    }
  };

  /** What the garage has answered for is no longer kept; nor is what nobody came back to. */
  const tidy = () => {
    const has = document.cookie.split("; ").find((one) => one.startsWith(ANSWERED))?.slice(ANSWERED.length);
    for (const name of Object.keys(localStorage).filter((key) => key.startsWith(START))) {
      const one = kept(name);
      if (!one || (has && one.id === has)) localStorage.removeItem(name);
    }
  };

  const say = (form, words, button) => {
    let line = form.querySelector(".kept");
    if (!line) {
      line = document.createElement("p");
      line.className = "kept";
      line.setAttribute("role", "status");
      form.append(line);
    }
    line.replaceChildren(words, ...(button ? [" ", button] : []));
  };

  const restore = (form) => {
    const all = kept(slot(form));
    if (!all) return;
    const here = fields(form);
    const back = [];
    const not = [];
    for (const [name, { was, typed }] of Object.entries(all.values)) {
      const field = here.get(name);
      if (!field || now(field) === typed) continue;
      if (first(field) !== was) {
        not.push((field.closest("label")?.textContent.trim() || name) + ": " + typed);
        continue;
      }
      if (isTick(field)) field.checked = typed === "true";
      else field.value = typed;
      back.push(field);
    }
    if (back.length + not.length === 0) return;
    for (let at = form.closest("details"); at; at = at.parentElement.closest("details")) at.open = true;
    back[0]?.dispatchEvent(new Event("input", { bubbles: true }));
    const drop = document.createElement("button");
    drop.type = "button";
    drop.className = "plain";
    drop.textContent = "Throw it away";
    drop.addEventListener("click", () => {
      localStorage.removeItem(slot(form));
      form.reset();
      form.querySelector(".kept").remove();
    });
    say(form,
      (back.length ? "Typed here before and not sent; it is in its place again. " : "")
        + (not.length ? "Changed by somebody meanwhile, so left as it is. You had typed " + not.join("; ") + "." : ""), drop);
  };

  const noConnection = (form) =>
    say(form, "No connection to the garage’s computer. What you typed is kept on this device; press again when it is back.");

  /** The same text sent again has the same number, so that it is not written down twice. */
  const send = (event) => {
    const form = event.target;
    if (!navigator.onLine) {
      event.preventDefault();
      noConnection(form);
      return;
    }
    const before = kept(slot(form));
    keep(form, "");
    const after = kept(slot(form));
    if (!after) return;
    const same = before?.id && JSON.stringify(before.values) === JSON.stringify(after.values);
    const id = same ? before.id : Date.now().toString(36) + Math.random().toString(36).slice(2, 8);
    keep(form, id);
    let mark = form.querySelector("input[name=typed-id]");
    if (!mark) {
      mark = document.createElement("input");
      mark.type = "hidden";
      mark.name = "typed-id";
      form.append(mark);
    }
    mark.value = id;
  };

  try {
    tidy();
  } catch {
    return;
  }
  for (const form of forms) {
    restore(form);
    form.addEventListener("input", () => keep(form, ""));
    form.addEventListener("submit", send);
  }
  document.querySelector("form[action='/sign-out']")?.addEventListener("submit", () => {
    for (const name of Object.keys(localStorage).filter((key) => key.startsWith(START))) localStorage.removeItem(name);
  });
})();
