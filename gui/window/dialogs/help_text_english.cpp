#include "window/dialogs/help_text.h"

namespace toehold::window {

namespace {

constexpr std::string_view method = R"(
<h3>What is found</h3>
<p>A push on the guard tips the post's plate about its toe. The deck presses on the toe, the anchors at the heel hold the
plate down, and the couple between them is many times the push. Toehold finds the pull and the shear on every anchor for
a push from <b>any</b> direction, follows each force down through threads, nuts, blocks and joists to their supports,
and compares what is asked (demand) with what is there (capacity).</p>
<h3>Three ways to find the pull</h3>
<ul>
<li><b>By hand</b>: moment over the lever arm from the heel anchors to the plate's edge, for pushes square to the plate.
Quick, and blind to a push aslant, which often pulls most on a corner anchor.</li>
<li><b>Rigid plate</b>: the plate stays plane; the bed under it only presses, anchors only pull.</li>
<li><b>Flexible plate</b>: the plate bends as thin plates do, and may pry on its anchors.</li>
</ul>
<p>The checks use the method of the detail's basis, with bed and anchors at half, once and twice their computed
stiffness and with the framing giving way, and take the worst of all. What is drawn while a hand is on the sheet is the
nominal stiffness alone; the checks follow when the hand rests.</p>
<h3>How to read the sheet</h3>
<ul>
<li>The red ink is <b>demand</b>. The grey outline beside it is <b>capacity</b>: where the red runs past its end, the
thing does not hold.</li>
<li>The frame around a thing is its <b>status</b>: plain where it holds, heavy and doubled where it fails, broken where
nothing is there to resist, dotted where the detail does not say enough to tell. The word always stands beside it.</li>
<li>The <b>rose</b> shows the pull on each anchor against the direction of the push; the outer circle is the largest of
all. 90 degrees is outward.</li>
<li>Pale figures marked <i>stale</i> are of an earlier state of the detail.</li>
</ul>
<h3>The verdict</h3>
<ul>
<li><b>ADEQUATE</b>: every check holds and nothing needed is missing.</li>
<li><b>INADEQUATE</b>: something fails, has nothing to resist it, or may not be built so.</li>
<li><b>INCOMPLETE</b>: nothing is known to fail, and something needed is not described.</li>
</ul>
<h3>Caution</h3>
<p>Guards are life safety: a person falls when one fails. Toehold helps a person who answers for the detail and does not
take that answer over. Local code and the authority having jurisdiction govern; where the law asks for a sealed design, a
licensed design professional must take responsibility for it. Read the assumptions and the cautions beside every
verdict.</p>
)";

constexpr std::string_view sources = R"(
<p>Each check names its clause in the list and in every line of its worked steps. The editions followed:</p>
<table border="0" cellpadding="4">
<tr><td valign="top"><b>Loads on guards</b></td><td>IBC 2021 1607.9 and IRC 2021 Table R301.5: 200 lb at the top, in any
direction; ASCE 7-16 for the combinations.</td></tr>
<tr><td valign="top"><b>Wood and its fasteners</b></td><td>AWC National Design Specification for Wood Construction, NDS
2018 (ASD and LRFD), with AWC TR12 for gaps under the fastener's head.</td></tr>
<tr><td valign="top"><b>Steel</b></td><td>AISC 360-16, Specification for Structural Steel Buildings.</td></tr>
<tr><td valign="top"><b>Aluminum</b></td><td>Aluminum Design Manual 2020.</td></tr>
<tr><td valign="top"><b>Sizes</b></td><td>ASME B18.2.1 (lag screws and bolts), B18.6.1 (wood screws), B18.21.1
(washers).</td></tr>
</table>
<p>Where practice differs the cautious reading is taken, and the assumption is listed with what the other choice would
give. A value marked <i>common practice</i> has no standard behind it. A value marked <i>from memory</i> waits for
somebody to hold it against its source, and must be confirmed before it is relied on.</p>
<p>The proof level of 2.5 times the load follows the practice of load tests under IBC 2021 1709.3.1.</p>
)";

constexpr std::string_view keys = R"(
<h3>On the sheet</h3>
<table border="0" cellpadding="3">
<tr><td><b>Tab, Shift+Tab</b></td><td>next and previous part; past the last the sheet is left</td></tr>
<tr><td><b>Ctrl+Tab</b></td><td>leave the sheet at once</td></tr>
<tr><td><b>Arrows</b></td><td>move what is selected by the nudge; with Shift far, with Ctrl finely</td></tr>
<tr><td><b>Delete</b></td><td>take out what is selected</td></tr>
<tr><td><b>Esc</b></td><td>take back the drag, leave the tool, or let go of the selection</td></tr>
<tr><td><b>V, H, C, B, P</b></td><td>select; add a hole, a corner, a block; move the sheet</td></tr>
<tr><td><b>1 2 3 4</b></td><td>plan, section, elevation, rose</td></tr>
<tr><td><b>M</b></td><td>the drawing at hand alone, and all again</td></tr>
<tr><td><b>+ - 0</b></td><td>larger, smaller, whole</td></tr>
<tr><td><b>[ ] G</b></td><td>turn the push by 5 degrees; back to the governing push</td></tr>
<tr><td><b>Alt while dragging</b></td><td>do not snap</td></tr>
<tr><td><b>Shift while dragging</b></td><td>along one axis only</td></tr>
</table>
<h3>In the checks</h3>
<table border="0" cellpadding="3">
<tr><td><b>Up, Down</b></td><td>the row above, below; its place shows on the drawings</td></tr>
<tr><td><b>Right or Enter, Left</b></td><td>open and close the worked steps</td></tr>
<tr><td><b>Ctrl+C</b></td><td>copy the steps as text</td></tr>
<tr><td><b>F8</b></td><td>the next that does not hold</td></tr>
<tr><td><b>Ctrl+Shift+R</b></td><td>a remark on the result, kept with the detail</td></tr>
</table>
<h3>Everywhere</h3>
<table border="0" cellpadding="3">
<tr><td><b>Ctrl+Z, Ctrl+Shift+Z</b></td><td>take back a step, do it again</td></tr>
<tr><td><b>Ctrl+S, Ctrl+Shift+S</b></td><td>save, save as</td></tr>
<tr><td><b>Ctrl+D, Ctrl+M, Ctrl+Shift+A</b></td><td>duplicate, mirror, array</td></tr>
<tr><td><b>Ctrl+1 to Ctrl+5</b></td><td>pressure, bent plate, marks, dimensions, framing</td></tr>
<tr><td><b>Ctrl+Alt+1, 2, 3</b></td><td>by hand, rigid, flexible</td></tr>
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
