#include "paper/page/html.h"

namespace toehold::paper::page {

// Drawings are ink on white: at night they are turned to light ink on dark with their hues kept. What is touched is at
// least 44 px high (common practice for fingers in gloves).
std::string_view style() {
    return R"css(
:root { color-scheme: light dark; --ground: #fdfcf8; --ink: #1b1b1b; --faint: #5a5a55; --rule: #b9b6ab; --field: #fff;
  --good: #14532d; --bad: #8c1616; --open: #6b4700; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; padding: 0 16px 32px; max-width: 46rem; background: #fdfcf8; background: var(--ground);
  color: #1b1b1b; color: var(--ink); font: 17px/1.45 system-ui, "DejaVu Sans", sans-serif; overflow-wrap: break-word; }
h1 { font-size: 1.5rem; line-height: 1.2; margin: 20px 0 4px; }
h2 { font-size: 1.3rem; margin: 40px 0 8px; padding-top: 12px; border-top: 3px solid; }
h3 { font-size: 1.05rem; margin: 24px 0 4px; letter-spacing: .04em; }
p { margin: 6px 0; }
a { color: inherit; }
.faint { color: #5a5a55; color: var(--faint); font-size: .9rem; }
.verdict { border: 3px solid; padding: 8px 12px; margin: 12px 0; }
.verdict strong { display: block; font-size: 1.15rem; }
.adequate { color: #14532d; color: var(--good); } .inadequate { color: #8c1616; color: var(--bad); }
.incomplete { color: #6b4700; color: var(--open); }
.verdict span { color: #1b1b1b; color: var(--ink); }
figure { margin: 12px 0; }
figure > svg { display: block; width: 100%; height: auto; }
figcaption { color: #5a5a55; color: var(--faint); font-size: .9rem; }
.key rect { fill: currentColor; } .key path, .key polyline { fill: none; stroke: currentColor; stroke-width: 1.5; }
.key text { font-size: 13px; text-anchor: middle; fill: currentColor; }
.code { max-width: 11rem; }
.code > svg { background: #fff; }
.hash { font-family: ui-monospace, "DejaVu Sans Mono", monospace; font-size: .75rem; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 8px 8px 8px 0; border-bottom: 1px solid #b9b6ab;
  border-color: var(--rule); }
td a { display: block; padding: 4px 0; font-weight: bold; }
ol, ul { margin: 4px 0; padding-left: 1.7em; }
li { margin: 8px 0; }
li b { display: block; }
.never { list-style: none; padding-left: 0; }
.never li { padding-left: 1.7em; position: relative; }
.never li::before { content: "\2715"; position: absolute; left: .2em; font-weight: bold; }
fieldset { border: 2px solid #b9b6ab; border-color: var(--rule); margin: 16px 0; padding: 8px 12px 12px;
  break-inside: avoid; min-width: 0; }
legend { font-size: 1.2rem; font-weight: bold; padding: 0 6px; }
.boxes { display: flex; flex-wrap: wrap; gap: 4px 18px; }
.boxes label { display: inline-flex; align-items: center; gap: 6px; min-width: 56px; min-height: 44px;
  font-size: 1.1rem; }
input[type=checkbox] { width: 26px; height: 26px; margin: 0; }
.line { display: block; margin-top: 8px; }
.line input { display: block; width: 100%; min-height: 44px; padding: 6px 8px; font: inherit; color: inherit;
  background: #fff; background: var(--field); border: 1px solid #b9b6ab; border-color: var(--rule); border-radius: 4px; }
button { min-height: 44px; padding: 6px 16px; font: inherit; }
footer { margin-top: 40px; border-top: 3px solid; padding-top: 8px; font-size: .9rem; }
[hidden] { display: none; }
@media (min-width: 40rem) { .signature { display: flex; gap: 16px; } .signature .line { flex: 1; } }
@media (prefers-color-scheme: dark) {
  :root { --ground: #14161a; --ink: #ecebe6; --faint: #aaa79d; --rule: #55534c; --field: #22252b; --good: #86d7a0;
    --bad: #ff9d94; --open: #f0c26b; }
  figure.drawing > svg { filter: invert(1) hue-rotate(180deg); }
}
@media print {
  :root { color-scheme: light; --ground: #fff; --ink: #000; --faint: #333; --rule: #777; --field: #fff;
    --good: #000; --bad: #000; --open: #000; }
  body { font-size: 10.5pt; max-width: none; padding: 0; }
  figure.drawing > svg { filter: none; width: 120mm; } figure.key > svg { width: 120mm; }
  h2 { break-before: page; } h2.first { break-before: auto; }
  figure, li, tr { break-inside: avoid; }
  button, .screen { display: none; }
  .signature { display: flex; gap: 16px; } .signature .line { flex: 1; }
  .line input { border: 0; border-bottom: 1px solid #000; border-radius: 0; }
  input[type=date]:invalid { color: transparent; }
}
)css";
}

// No `<` and no `&` in it: read as XML it must be the same.
std::string_view script() {
    return R"js(
(function () {
  "use strict";
  var page = document.getElementById("page");
  var key = "toehold site page " + page.getAttribute("data-input");
  var fields = Array.prototype.slice.call(page.querySelectorAll("input"));
  var posts = Array.prototype.slice.call(page.querySelectorAll("fieldset"));
  var kept = {};
  function show(id) { document.getElementById(id).removeAttribute("hidden"); }
  function count() {
    var signed = posts.filter(function (post) {
      return Array.prototype.slice.call(post.querySelectorAll("input")).every(function (field) {
        return field.type === "checkbox" ? field.checked : field.value !== "";
      });
    });
    document.getElementById("signed").textContent = String(signed.length);
  }
  function keep(field) {
    kept[field.name] = field.type === "checkbox" ? field.checked : field.value;
    try { window.localStorage.setItem(key, JSON.stringify(kept)); } catch (refused) { show("not-kept"); }
    count();
  }
  try { kept = JSON.parse(window.localStorage.getItem(key) || "{}"); } catch (refused) { show("not-kept"); }
  fields.forEach(function (field) {
    if (Object.prototype.hasOwnProperty.call(kept, field.name)) {
      if (field.type === "checkbox") { field.checked = kept[field.name] === true; }
      else { field.value = String(kept[field.name]); }
    }
    field.addEventListener("input", function () { keep(field); });
    field.addEventListener("change", function () { keep(field); });
  });
  document.getElementById("print").addEventListener("click", function () { window.print(); });
  show("kept");
  count();
}());
)js";
}

}  // namespace toehold::paper::page
