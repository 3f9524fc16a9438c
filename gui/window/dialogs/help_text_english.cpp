#include "window/dialogs/help_text.h"

namespace toehold::window {

namespace {

constexpr std::string_view method = R"(
<h3>What is found</h3>
<p>A push on the guard rotates the base plate about its toe. The deck bears on the toe, the anchors at the heel hold the
plate down, and the couple between them is many times the push. Toehold finds the tension and the shear on every anchor
for a push from <b>any</b> direction, follows each force down through threads, nuts, blocks and joists to their
supports, and compares demand with capacity.</p>
<h3>Three ways to find the tension</h3>
<ul>
<li><b>By hand</b>: moment over the lever arm from the heel anchors to the plate's edge, for pushes square to the plate.
Quick, but it misses skewed pushes, which often govern a corner anchor.</li>
<li><b>Rigid plate</b>: the plate stays plane; the support under it only bears, anchors only carry tension.</li>
<li><b>Flexible plate</b>: the plate bends as thin plates do, and may pry on its anchors.</li>
</ul>
<p>A post <b>on the side</b> of a rim, joist or stringer turns about the lower or upper edge of its contact; the fasteners
and ties pull, the member bears on the post and can only bear. By hand: push times height over the arm to the
fasteners. Its sheet shows the member's face where a plate's shows the plan.</p>
<p>The checks use the method of the detail's basis, with bed and anchors at half, once and twice their computed
stiffness and with the flexibility of the framing, and take the worst. While you drag, the drawings show the nominal
stiffness alone; the checks follow when you stop.</p>
<h3>How to read the sheet</h3>
<ul>
<li>Red is <b>demand</b>. The gray outline beside it is <b>capacity</b>: where the red runs past its end, the check
fails.</li>
<li>The frame around a thing is its <b>status</b>: plain for PASS, heavy and doubled for FAIL, broken for NO LOAD PATH,
dotted for NOT SPECIFIED. The word always stands beside it.</li>
<li>The <b>rose</b> shows the tension on each anchor against the direction of the push; the outer circle is the largest of
all. 90 degrees is outward.</li>
<li>Pale figures marked <i>out of date</i> are of an earlier state of the detail.</li>
<li>While you drag an anchor, a side of the plate, a block or a screw's tip, the places where <b>every check passes</b>
are tinted, the border named by what stops it there; the border is broken until the whole engine has confirmed it.</li>
</ul>
<h3>The verdict</h3>
<ul>
<li><b>ADEQUATE</b>: every check passes and everything needed is specified.</li>
<li><b>INADEQUATE</b>: something fails, has no load path, or is not permitted.</li>
<li><b>INCOMPLETE</b>: nothing is known to fail, and something needed is not specified.</li>
</ul>
<h3>Caution</h3>
<p>Guards are life safety: a person falls when one fails. Toehold assists the engineer responsible for the detail and
does not replace one. Local code and the authority having jurisdiction govern; where the law asks for a sealed design, a
licensed design professional must take responsibility for it. Read the assumptions and the cautions beside every
verdict.</p>
)";

constexpr std::string_view sources = R"(
<p>Each check names its clause in the list and in every line of its worked steps. The editions followed:</p>
<table border="0" cellpadding="4">
<tr><td valign="top"><b>Loads on guards</b></td><td>IBC and IRC of 2018, 2021 and 2024, as the basis names: 200 lb at
the top, in any direction, and outside one- and two-family dwellings 50 or 20 lb/ft along it; ASCE 7-16 or 7-22 for the
combinations.</td></tr>
<tr><td valign="top"><b>Wood and its fasteners</b></td><td>AWC National Design Specification for Wood Construction, NDS
2018 (ASD and LRFD), with AWC TR12 for gaps under the fastener's head.</td></tr>
<tr><td valign="top"><b>Steel</b></td><td>AISC 360-16, Specification for Structural Steel Buildings.</td></tr>
<tr><td valign="top"><b>Aluminum</b></td><td>Aluminum Design Manual 2020.</td></tr>
<tr><td valign="top"><b>Sizes</b></td><td>ASME B18.2.1 (lag screws and bolts), B18.6.1 (wood screws), B18.21.1
(washers).</td></tr>
</table>
<p>Where practice differs the conservative reading is taken, and the assumption is listed with the result of the other
choice. A value marked <i>common practice</i> has no standard behind it. A value marked <i>from memory</i> has not been
checked against its source; confirm it before relying on it.</p>
<p>The proof level of 2.5 times the load follows the practice of load tests under IBC 1709.3.1.</p>
)";

constexpr std::string_view keys = R"(
<h3>On the sheet</h3>
<table border="0" cellpadding="3">
<tr><td><b>Tab, Shift+Tab</b></td><td>next and previous part; past the last, leave the sheet</td></tr>
<tr><td><b>Ctrl+Tab</b></td><td>leave the sheet at once</td></tr>
<tr><td><b>Arrows</b></td><td>nudge the selection; with Shift farther, with Ctrl finer</td></tr>
<tr><td><b>Delete</b></td><td>delete the selection</td></tr>
<tr><td><b>Esc</b></td><td>cancel the drag, leave the tool, or clear the selection</td></tr>
<tr><td><b>V, H, C, B, P</b></td><td>select; add a hole, a corner, a block; move the sheet</td></tr>
<tr><td><b>1 2 3 4</b></td><td>plan, section, elevation, rose</td></tr>
<tr><td><b>M</b></td><td>the active drawing alone, and all again</td></tr>
<tr><td><b>+ - 0</b></td><td>larger, smaller, whole</td></tr>
<tr><td><b>[ ] G</b></td><td>turn the push by 5 degrees; back to the governing push</td></tr>
<tr><td><b>Alt while dragging</b></td><td>do not snap</td></tr>
<tr><td><b>Shift while dragging</b></td><td>along one axis only</td></tr>
</table>
<h3>In the checks</h3>
<table border="0" cellpadding="3">
<tr><td><b>Up, Down</b></td><td>the row above, below; its part is selected on the drawings</td></tr>
<tr><td><b>Right or Enter, Left</b></td><td>open and close the worked steps</td></tr>
<tr><td><b>Ctrl+C</b></td><td>copy the steps as text</td></tr>
<tr><td><b>F8</b></td><td>the next failing check</td></tr>
<tr><td><b>Ctrl+Shift+R</b></td><td>a remark on the result, saved with the detail</td></tr>
</table>
<h3>In a chart</h3>
<table border="0" cellpadding="3">
<tr><td><b>Arrows, Enter</b></td><td>to the next point; show its detail. Esc drops it</td></tr>
</table>
<h3>In a project</h3>
<table border="0" cellpadding="3">
<tr><td><b>Up, Down</b></td><td>the post above, below; it is marked on the guard line</td></tr>
<tr><td><b>Enter, Ctrl+E</b></td><td>open the base of the post, as a copy</td></tr>
<tr><td><b>F5, Shift+F5</b></td><td>review again; stop the review</td></tr>
</table>
<h3>Everywhere</h3>
<table border="0" cellpadding="3">
<tr><td><b>Ctrl+Z, Ctrl+Shift+Z</b></td><td>undo, redo</td></tr>
<tr><td><b>Ctrl+S, Ctrl+Shift+S</b></td><td>save, save as</td></tr>
<tr><td><b>Ctrl+D, Ctrl+M, Ctrl+Shift+A</b></td><td>duplicate, mirror, array</td></tr>
<tr><td><b>Ctrl+1 to Ctrl+6</b></td><td>pressure, bent plate, marks, dimensions, framing, where it holds</td></tr>
<tr><td><b>Ctrl+Alt+1, 2, 3</b></td><td>by hand, rigid, flexible</td></tr>
<tr><td><b>F2, F7, F9</b></td><td>drawings, sizes, charts; Ctrl+F7 finds sizes at once</td></tr>
<tr><td><b>F4, F6</b></td><td>properties, review</td></tr>
<tr><td><b>Ctrl+R</b></td><td>the calculation report; other papers are under File, Papers</td></tr>
<tr><td><b>Ctrl+F</b></td><td>findings, remedies, assumptions and cautions</td></tr>
<tr><td><b>F1</b></td><td>this help</td></tr>
</table>
<p>Lengths are typed as on a drawing: <tt>3 3/8</tt>, <tt>3'-0"</tt>, <tt>86 mm</tt>. A number without a unit counts in
the units shown.</p>
)";

}  // namespace

std::string_view help_text_english(HelpPage page) {
    switch (page) {
        case HelpPage::method:
            return method;
        case HelpPage::sources:
            return sources;
        case HelpPage::keys:
            return keys;
    }
    return {};
}

}  // namespace toehold::window
