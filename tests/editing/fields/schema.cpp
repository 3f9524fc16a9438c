// Nothing the file format can say is out of the window's reach: every element, attribute and word of the schema has its
// field. A name added to the schema fails this until it has one.
#include "editing/fields/variants.h"
#include "editing/samples.h"
#include "support/file_bytes.h"

#include <catch2/catch.hpp>

#include <map>
#include <regex>
#include <set>

using namespace toehold;

namespace {

struct SchemaName {
    std::string name;                ///< `guard@height` an attribute, `plate/circle` an element
    std::vector<std::string> words;  ///< of an attribute with a closed list
};

std::string schema_text(const std::string& file) {
    const std::string text = test::bytes_of(std::string(TOEHOLD_DATA_FOLDER) + "/schema/" + file);
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t start = text.find("<!--", at);
        plain += text.substr(at, start - at);
        if (start == std::string::npos) break;
        at = text.find("-->", start) + 3;
    }
    return plain;
}

std::string attribute(const std::string& tag, const std::string& name) {
    std::smatch found;
    return std::regex_search(tag, found, std::regex("\\b" + name + "=\"([^\"]*)\"")) ? found[1].str() : std::string();
}

/// The nearest named type, element or group an item stands in.
std::string holder(const std::vector<std::string>& open) {
    for (auto one = open.rbegin(); one != open.rend(); ++one) {
        if (!one->empty()) return *one;
    }
    return {};
}

std::vector<SchemaName> schema_names(const std::string& file) {
    const std::string text = schema_text(file);
    const std::set<std::string> holders{"element", "complexType", "group", "attributeGroup"};
    std::vector<SchemaName> names;
    std::vector<std::string> open;
    const std::regex tags("<(/?)xs:([A-Za-z]+)([^>]*?)(/?)>");
    for (std::sregex_iterator tag(text.begin(), text.end(), tags), end; tag != end; ++tag) {
        if ((*tag)[1].length() > 0) {
            open.pop_back();
            continue;
        }
        const std::string kind = (*tag)[2];
        const std::string name = attribute((*tag)[3], "name");
        if (kind == "attribute") names.push_back({holder(open) + "@" + name, {}});
        if (kind == "element") names.push_back({holder(open) + "/" + name, {}});
        if (kind == "enumeration") names.back().words.push_back(attribute((*tag)[3], "value"));
        if ((*tag)[4].length() == 0) open.push_back(holders.contains(kind) ? name : std::string());
    }
    return names;
}

/// Said by where a field stands: a heading, or the end it is of.
const std::string by_place = "-";

const std::map<std::string, std::string>& field_for() {
    static const std::string block = "framing/block[B1]/";
    static const std::string end = "framing/block[B1]/end[from]/";
    static const std::map<std::string, std::string> map{
        {"/base-detail", by_place},
        {"base-detail/guard", by_place},
        {"base-detail/post", "post/shape"},
        {"base-detail/plate", by_place},
        {"base-detail/plate-from", "plate/from/file"},
        {"base-detail/weld", "weld/given"},
        {"base-detail/anchors", "anchor-group-count"},
        {"base-detail/layers", by_place},
        {"base-detail/framing", by_place},
        {"base-detail/loads", by_place},
        {"base-detail/basis", by_place},
        {"base-detail/remarks", by_place},
        {"base-detail@name", "name"},
        {"base-detail@note", "note"},
        {"base-detail@project", "project"},
        {"guard@height", "guard/height"},
        {"guard@plate-below-surface", "guard/plate-below-surface"},
        {"guard@occupancy", "guard/occupancy"},
        {"guard@tributary-length", "guard/tributary-length"},
        {"guard@handrail", "guard/handrail"},
        {"post/shoe", "post/shape"},
        {"post@shape", "post/shape"},
        {"post@width", "post/width"},
        {"post@depth", "post/depth"},
        {"post@diameter", "post/diameter"},
        {"post@wall", "post/wall"},
        {"post@metal", "post/metal"},
        {"post@size", "post/size"},
        {"post@material", "post/species"},
        {"post@species", "post/species"},
        {"post@grade", "post/grade"},
        {"post@notched", "post/notched"},
        {"post@gap", "post/gap"},
        {"post@apart", "post/apart"},
        {"post/certificate", "post/certified"},
        {"certificate@yield", "post/certificate/yield"},
        {"certificate@ultimate", "post/certificate/ultimate"},
        {"certificate@source", "post/certificate/source"},
        {"post/stub", "post/on-stub"},
        {"stub@width", "post/stub/width"},
        {"stub@depth", "post/stub/depth"},
        {"stub@diameter", "post/stub/diameter"},
        {"stub@wall", "post/stub/wall"},
        {"stub@height", "post/stub/height"},
        {"stub@metal", "post/stub/metal"},
        {"stub@fixing", "post/stub/fixing"},
        {"shoe@form", "post/shoe/form"},
        {"shoe@attachment", "post/shoe/attachment"},
        {"shoe@wall", "post/shoe/wall"},
        {"shoe@height", "post/shoe/height"},
        {"shoe@metal", "post/shoe/metal"},
        {"shoe@allowable-moment", "post/shoe/allowable-moment"},
        {"shoe@moment-source", "post/shoe/moment-source"},
        {"plate-from@file", "plate/from/file"},
        {"plate-from@id", "plate/from/id"},
        {"plate-from@sha256", "plate/from/sha256"},
        {"weld/gussets", "weld/gussets-given"},
        {"weld@kind", "weld/kind"},
        {"weld@leg", "weld/leg"},
        {"weld@throat", "weld/throat"},
        {"weld@faces", "weld/faces"},
        {"weld@sides", "weld/sides"},
        {"gussets@sides", "weld/gussets/sides"},
        {"gussets@height", "weld/gussets/height"},
        {"gussets@length", "weld/gussets/length"},
        {"gussets@thickness", "weld/gussets/thickness"},
        {"gussets@leg", "weld/gussets/leg"},
        {"weld@filler", "weld/filler"},
        {"anchors/lag-screw", "anchors[1]/fastener"},
        {"anchors/wood-screw", "anchors[1]/fastener"},
        {"anchors/through-bolt", "anchors[1]/fastener"},
        {"anchors/reported-fastener", "anchors[1]/fastener"},
        {"anchors/washer", "anchors[1]/washer"},
        {"anchors@holes", "anchors[1]/holes"},
        {"anchors@preload", "anchors[1]/preload"},
        {"anchors@corrosion-protection", "anchors[1]/corrosion-protection"},
        {"screw@size", "anchors[1]/size"},
        {"screw@length", "anchors[1]/length"},
        {"screw@thread", "anchors[1]/thread"},
        {"washer@size", "anchors[1]/washer"},
        {"through-bolt/washer-below", "anchors[1]/washer-below"},
        {"through-bolt/backing-plate", "anchors[1]/below"},
        {"backing-plate@thickness", "anchors[1]/backing-thickness"},
        {"backing-plate@metal", "anchors[1]/backing-metal"},
        {"through-bolt/lower-plate", "anchors[1]/below"},
        {"lower-plate@shape", "anchors[1]/lower-shape"},
        {"lower-plate@x", "anchors[1]/lower-x"},
        {"lower-plate@y", "anchors[1]/lower-y"},
        {"lower-plate@thickness", "anchors[1]/lower-thickness"},
        {"lower-plate@leg", "anchors[1]/lower-leg"},
        {"lower-plate@metal", "anchors[1]/lower-metal"},
        {"through-bolt@size", "anchors[1]/size"},
        {"through-bolt@grade", "anchors[1]/grade"},
        {"through-bolt@length", "anchors[1]/length"},
        {"through-bolt@thread", "anchors[1]/thread"},
        {"through-bolt@threads", "anchors[1]/threads"},
        {"reported-fastener@name", "anchors[1]/name"},
        {"reported-fastener@report", "anchors[1]/report"},
        {"reported-fastener@diameter", "anchors[1]/diameter"},
        {"reported-fastener@length", "anchors[1]/length"},
        {"reported-fastener@thread", "anchors[1]/thread"},
        {"reported-fastener@withdrawal", "anchors[1]/withdrawal"},
        {"reported-fastener@tension", "anchors[1]/tension"},
        {"reported-fastener@lateral", "anchors[1]/lateral"},
        {"reported-fastener@minimum-penetration", "anchors[1]/minimum-penetration"},
        {"reported-fastener@minimum-edge", "anchors[1]/minimum-edge"},
        {"reported-fastener@minimum-end", "anchors[1]/minimum-end"},
        {"reported-fastener@minimum-spacing", "anchors[1]/minimum-spacing"},
        {"layers/decking", "layers/decking-given"},
        {"decking/fasteners", "layers/decking/fastened"},
        {"decking@material", "layers/decking/material"},
        {"decking@size", "layers/decking/size"},
        {"decking@thickness", "layers/decking/thickness"},
        {"decking@evidence", "layers/decking/evidence"},
        {"decking@bearing", "layers/decking/bearing"},
        {"decking@modulus", "layers/decking/modulus"},
        {"decking@report", "layers/decking/report"},
        {"layers/packing", "layers/packing-given"},
        {"packing/at", "layers/packing/place-count"},
        {"packing@shape", "layers/packing/shape"},
        {"packing@width", "layers/packing/width"},
        {"packing@depth", "layers/packing/depth"},
        {"packing@diameter", "layers/packing/diameter"},
        {"packing@material", "layers/packing/material"},
        {"packing@hole", "layers/packing/hole"},
        {"at@x", "layers/packing/at[1]/x"},
        {"at@y", "layers/packing/at[1]/y"},
        {"layers/shim", "layers/shim-count"},
        {"shim@material", "layers/shim[1]/material"},
        {"shim@thickness", "layers/shim[1]/thickness"},
        {"decking-fasteners@diameter", "layers/decking/fasteners/diameter"},
        {"decking-fasteners@length", "layers/decking/fasteners/length"},
        {"decking-fasteners@per-crossing", "layers/decking/fasteners/per-crossing"},
        {"decking-fasteners@board", "layers/decking/fasteners/board"},
        {"decking-fasteners@lateral", "layers/decking/fasteners/lateral"},
        {"decking-fasteners@report", "layers/decking/fasteners/report"},
        {"framing/joists", "framing/joists-given"},
        {"joists/joist", "framing/joists/count"},
        {"joist@id", "framing/joist[J1]/id"},
        {"joist@offset", "framing/joist[J1]/offset"},
        {"joist@plies", "framing/joist[J1]/plies"},
        {"joists@from", "framing/joists/from"},
        {"joists@to", "framing/joists/to"},
        {"framing/rim", "framing/rim-count"},
        {"framing/support", "framing/support-count"},
        {"framing/block", "framing/block-count"},
        {"framing@treated", "framing/treated"},
        {"framing/deck", "framing/deck/dead"},
        {"deck@dead", "framing/deck/dead"},
        {"deck@live", "framing/deck/live"},
        {"framing/material", "framing/material-count"},
        {"own-wood@id", "framing/material[W1]/id"},
        {"own-wood@name", "framing/material[W1]/name"},
        {"own-wood@source", "framing/material[W1]/source"},
        {"own-wood@bending", "framing/material[W1]/bending"},
        {"own-wood@bending-flat", "framing/material[W1]/bending-flat"},
        {"own-wood@tension", "framing/material[W1]/tension"},
        {"own-wood@shear", "framing/material[W1]/shear"},
        {"own-wood@compression-perp", "framing/material[W1]/compression-perp"},
        {"own-wood@compression", "framing/material[W1]/compression"},
        {"own-wood@modulus", "framing/material[W1]/modulus"},
        {"own-wood@modulus-min", "framing/material[W1]/modulus-min"},
        {"own-wood@specific-gravity", "framing/material[W1]/specific-gravity"},
        {"own-wood@volume-factor", "framing/material[W1]/volume-factor"},
        {"own-wood@volume-exponent", "framing/material[W1]/volume-exponent"},
        {"own-wood@wet-service", "framing/material[W1]/wet-service"},
        {"rim@id", "framing/rim[R1]/id"},
        {"rim@at", "framing/rim[R1]/at"},
        {"rim@from", "framing/rim[R1]/from"},
        {"rim@to", "framing/rim[R1]/to"},
        {"rim@plies", "framing/rim[R1]/plies"},
        {"support@id", "framing/support[S1]/id"},
        {"support@kind", "framing/support[S1]/kind"},
        {"support@at", "framing/support[S1]/at"},
        {"support@bearing", "framing/support[S2]/bearing"},
        {"block/end", by_place},
        {"block@id", block + "id"},
        {"block@from", block + "from"},
        {"block@to", block + "to"},
        {"block@across", block + "across"},
        {"block@plies", block + "plies"},
        {"block@stack", block + "stack"},
        {"block@stack-fastened", block + "stack-fastened"},
        {"block-end@at", by_place},
        {"block-end@joist", end + "joist"},
        {"connection/nails", end + "connection"},
        {"connection/screws", end + "connection"},
        {"connection/toe-nails", end + "connection"},
        {"connection/angles", end + "connection"},
        {"connection/structural-screws", end + "connection"},
        {"structural-screws@lateral", end + "lateral"},
        {"structural-screws@withdrawal", end + "withdrawal"},
        {"structural-screws@report", end + "report"},
        {"structural-screws@conditions", end + "conditions"},
        {"connection/connector", end + "connection"},
        {"end-grain-fasteners@diameter", end + "diameter"},
        {"end-grain-fasteners@length", end + "length"},
        {"end-grain-fasteners@count", end + "count"},
        {"end-grain-fasteners@spread", end + "spread"},
        {"toe-nails@diameter", end + "diameter"},
        {"toe-nails@length", end + "length"},
        {"toe-nails@count", end + "count"},
        {"toe-nails@spread", end + "spread"},
        {"angles@sides", end + "sides"},
        {"angles@thickness", end + "thickness"},
        {"angles@metal", end + "metal"},
        {"angles@kind", end + "kind"},
        {"angles@diameter", end + "diameter"},
        {"angles@length", end + "length"},
        {"angles@per-leg", end + "per-leg"},
        {"angles@spacing", end + "spacing"},
        {"angles@gauge", end + "gauge"},
        {"angles@threads", end + "threads"},
        {"connector@name", end + "name"},
        {"connector@report", end + "report"},
        {"connector@uplift", end + "uplift"},
        {"connector@down", end + "down"},
        {"connector@lateral", end + "lateral"},
        {"connector@couple-arm", end + "couple-arm"},
        {"connector@pull", end + "pull"},
        {"connector@height", end + "height"},
        {"connector@stiffness", end + "stiffness"},
        {"connector@from-top", end + "from-top"},
        {"connector@from-bottom", end + "from-bottom"},
        {"loads/concentrated", "loads/concentrated"},
        {"concentrated@push", "loads/concentrated/push"},
        {"concentrated@down", "loads/concentrated/down"},
        {"loads/line", "loads/line"},
        {"line@push", "loads/line/push"},
        {"line@spacing", "loads/line/spacing"},
        {"line@down", "loads/line/down"},
        {"loads/user", "loads/user-count"},
        {"user@name", "loads/user[1]/name"},
        {"user@push", "loads/user[1]/push"},
        {"user@down", "loads/user[1]/down"},
        {"user@height", "loads/user[1]/height"},
        {"user@source", "loads/user[1]/source"},
        {"loads/wind", "loads/wind"},
        {"wind@pressure", "loads/wind/pressure"},
        {"wind@level", "loads/wind/level"},
        {"wind@area", "loads/wind/area"},
        {"wind@infill-height", "loads/wind/infill-height"},
        {"wind@solid-ratio", "loads/wind/solid-ratio"},
        {"wind@centroid", "loads/wind/centroid"},
        {"wind@with-live-load", "loads/wind/with-live-load"},
        {"loads/proof", "loads/proof/push"},
        {"proof@push", "loads/proof/push"},
        {"loads@directions", "loads/directions"},
        {"basis/fixed-stiffness", "basis/fixed"},
        {"fixed-stiffness@bed", "basis/fixed-stiffness/bed"},
        {"fixed-stiffness@anchor", "basis/fixed-stiffness/anchor"},
        {"fixed-stiffness@reason", "basis/fixed-stiffness/reason"},
        {"basis@method", "basis/method"},
        {"basis@load-duration", "basis/load-duration"},
        {"basis@time-effect", "basis/time-effect"},
        {"basis@moisture", "basis/moisture"},
        {"basis@temperature", "basis/temperature"},
        {"basis@incised", "basis/incised"},
        {"basis@torsion", "basis/torsion"},
        {"basis@bearing", "basis/bearing"},
        {"basis@shrinkage-detailed", "basis/shrinkage-detailed"},
        {"basis@plate", "basis/plate"},
        {"basis@plate-strength", "basis/plate-strength"},
        {"basis@decking-in-shear", "basis/decking-in-shear"},
        {"basis@code", "basis/code"},
        {"basis@movement-limit", "basis/movement-limit"},
        {"basis@tube-diagonal", "basis/tube-diagonal"},
        {"basis@stainless-bending", "basis/stainless-bending"},
        {"remarks/remark", "remark-count"},
        {"remark@about", "remarks/remark[1]/about"},
        {"remark@subject", "remarks/remark[1]/subject"},
        {"remark@by", "remarks/remark[1]/by"},
        {"remark@date", "remarks/remark[1]/date"},
        {"remark@state", "remarks/remark[1]/state"},
        {"remark@words", "remarks/remark[1]/words"},
        {"section@width", "anchors[1]/backing-width"},
        {"section@depth", "anchors[1]/backing-depth"},
        {"along@along", block + "along"},
        {"piece@size", block + "size"},
        {"piece@flat", block + "flat"},
        {"piece@material", block + "species"},
        {"piece@width", block + "width"},
        {"piece@depth", block + "depth"},
        {"piece@species", block + "species"},
        {"piece@grade", block + "grade"},
        {"plate/rectangle", "plate/outline"},
        {"plate/circle", "plate/outline"},
        {"plate/polygon", "plate/outline"},
        {"rectangle@width", "plate/width"},
        {"rectangle@depth", "plate/depth"},
        {"rectangle@corner-radius", "plate/corner-radius"},
        {"rectangle@x", "plate/x"},
        {"rectangle@y", "plate/y"},
        {"circle@diameter", "plate/diameter"},
        {"circle@x", "plate/x"},
        {"circle@y", "plate/y"},
        {"polygon/corner", "plate/corner-count"},
        {"plate/hole", "plate/hole-count"},
        {"plate/slot", "plate/hole[A]/shape"},
        {"hole@id", "plate/hole[A]/id"},
        {"hole@diameter", "plate/hole[A]/diameter"},
        {"slot@id", "plate/hole[A]/id"},
        {"slot@length", "plate/hole[A]/length"},
        {"slot@width", "plate/hole[A]/width"},
        {"slot@angle", "plate/hole[A]/angle"},
        {"plate@id", "plate/id"},
        {"plate@name", "plate/name"},
        {"plate@metal", "plate/metal"},
        {"plate@thickness", "plate/thickness"},
        {"position@x", "plate/corner[1]/x"},
        {"position@y", "plate/corner[1]/y"},
    };
    return map;
}

/// Each path of any kind of detail, with the words its field offers.
std::map<std::string, std::set<std::string>> every_field() {
    std::map<std::string, std::set<std::string>> all;
    for (const test::Variant& variant : test::field_variants()) {
        for (const editing::Field& field : editing::fields(variant.detail, test::field_catalog(), units::System::us)) {
            std::set<std::string>& words = all[field.path];
            for (const editing::Choice& choice : field.choices) words.insert(choice.value);
        }
    }
    return all;
}

/// An element that is one kind of several must be a word of the field that chooses.
void check_word_of_kind(const std::string& name, const std::string& path,
                        const std::map<std::string, std::set<std::string>>& all) {
    static const std::set<std::string> choosers{"anchors[1]/fastener", "framing/block[B1]/end[from]/connection",
                                                "plate/outline", "plate/hole[A]/shape", "anchors[1]/below"};
    const std::size_t slash = name.find('/');
    if (slash == std::string::npos || !choosers.contains(path)) return;
    INFO("kind " << name);
    CHECK(all.at(path).contains(name.substr(slash + 1)));
}

}  // namespace

TEST_CASE("Every element, attribute and word of the schema has its field", "[property]") {
    const std::map<std::string, std::set<std::string>> all = every_field();
    std::size_t count = 0;
    for (const std::string file : {"base-detail.xsd", "base.xsd", "plate.xsd"}) {
        for (const SchemaName& one : schema_names(file)) {
            INFO(file << ": " << one.name);
            ++count;
            const auto path = field_for().find(one.name);
            CHECK(path != field_for().end());
            if (path == field_for().end() || path->second == by_place) continue;
            INFO("field " << path->second);
            CHECK(all.contains(path->second));
            if (!all.contains(path->second)) continue;
            check_word_of_kind(one.name, path->second, all);
            for (const std::string& word : one.words) {
                INFO("word " << word);
                CHECK(all.at(path->second).contains(word));
            }
        }
    }
    CHECK(count > 190);
}
