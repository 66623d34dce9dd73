// The fill-in card by keyboard alone, judged while one types. Without this file its buttons do the same.
(() => {
  "use strict";
  const form = document.getElementById("card");
  if (!form) {
    return;
  }
  const PAUSE = 120;
  const fields = () =>
    [...form.querySelectorAll(".card input:not([type=hidden]), .card select, .go button")].filter(
      (field) => field.offsetParent !== null);
  const waiting = new WeakMap();

  const value = (row, key) => {
    const field = row.querySelector("[data-key=" + CSS.escape(key) + "]");
    if (!field) {
      return "";
    }
    if (field.value) {
      return field.value;
    }
    const below = field.placeholder || field.options?.[0]?.text || "";
    return key === "torque" || below === "not known" ? "" : below;
  };

  const judge = async (row) => {
    const asked = new URLSearchParams();
    for (const key of ["torque", "thread", "class", "condition"]) {
      asked.set(key, value(row, key));
    }
    try {
      const answer = await fetch("/card-part?" + asked);
      if (answer.ok) {
        row.querySelector(".beside").innerHTML = await answer.text();
      }
    } catch (fault) {
      row.querySelector(".beside").textContent = "";
    }
  };

  // An empty source beside a typed torque is the one above: said in its field, and kept so.
  const above = () => {
    let last = "";
    for (const field of form.querySelectorAll("[data-key=source]")) {
      const torque = field.closest("tr").querySelector("[data-key=torque]");
      field.dataset.below ??= field.placeholder;
      const newly = torque.value && torque.value !== torque.defaultValue;
      field.placeholder = last && newly && !field.defaultValue ? "as above: " + last : field.dataset.below;
      if (field.value && field.value !== "-") {
        last = field.value;
      }
    }
  };

  const go = (field) => {
    field.focus();
    field.select?.();
  };

  form.addEventListener("input", (event) => {
    const row = event.target.closest("tr.turns");
    above();
    if (row) {
      clearTimeout(waiting.get(row));
      waiting.set(row, setTimeout(() => judge(row), PAUSE));
    }
  });

  form.addEventListener("keydown", (event) => {
    const field = event.target;
    if (event.key === "Enter" && event.ctrlKey) {
      event.preventDefault();
      form.requestSubmit(form.querySelector("button[name=to][value=plan]"));
      return;
    }
    if (!field.closest(".card") || field.tagName === "BUTTON" || field.tagName === "SUMMARY") {
      return;
    }
    if (event.key === "Enter") {
      event.preventDefault();
      const all = fields();
      go(all[Math.min(all.indexOf(field) + 1, all.length - 1)]);
    } else if ((event.key === "ArrowDown" || event.key === "ArrowUp") && field.tagName === "INPUT" && field.dataset.key) {
      const column = [...form.querySelectorAll("[data-key=" + CSS.escape(field.dataset.key) + "]")];
      const next = column[column.indexOf(field) + (event.key === "ArrowDown" ? 1 : -1)];
      if (next) {
        event.preventDefault();
        go(next);
      }
    }
  });
  above();
})();
