#include "editing/fields/schema_map.h"

namespace toehold::test {

const std::map<std::string, std::string>& side_field_for() {
    static const std::map<std::string, std::string> map{
        {"base-detail/side-fastened", by_place},
        {"anchors/head-plate", "anchors[1]/head-plate-given"},
        {"anchors@into", "anchors[1]/into"},
        {"metal-plate@thickness", "anchors[1]/backing-thickness"},
        {"metal-plate@metal", "anchors[1]/backing-metal"},
        {"side-fastened@member", "side/member"},
        {"side-fastened@face", "side/face"},
        {"side-fastened@post-bottom", "side/post-bottom"},
        {"side-fastened@boards-brace-member", "side/boards-brace-member"},
        {"side-fastened-parts/place", "side/place-count"},
        {"side-fastened-parts/anchors", "anchor-group-count"},
        {"side-fastened-parts/tie", "side/tie-count"},
        {"side-fastened-parts/layer", "side/layer-count"},
        {"side-fastened-parts/bracket", "side/bracket-given"},
        {"side-fastened-parts/notch", "side/notch-given"},
        {"side-fastened-parts/stringer", "side/stringer-given"},
        {"side-fastened-parts/decking", "side/decking-given"},
        {"place@id", "side/place[A]/id"},
        {"place@x", "side/place[A]/x"},
        {"place@below-top", "side/place[A]/below-top"},
        {"tie@id", "side/tie[T1]/id"},
        {"tie@name", "side/tie[T1]/name"},
        {"tie@report", "side/tie[T1]/report"},
        {"tie@x", "side/tie[T1]/x"},
        {"tie@below-top", "side/tie[T1]/below-top"},
        {"tie@bolt", "side/tie[T1]/bolt"},
        {"tie@tension", "side/tie[T1]/tension"},
        {"tie@deflection", "side/tie[T1]/deflection"},
        {"tie@into", "side/tie[T1]/into"},
        {"tie@eccentricity", "side/tie[T1]/eccentricity"},
        {"tie@chosen", "side/tie[T1]/chosen"},
        {"layer@material", "side/layer[1]/material"},
        {"layer@thickness", "side/layer[1]/thickness"},
        {"layer@from", "side/layer[1]/from"},
        {"layer@to", "side/layer[1]/to"},
        {"bracket@width", "side/bracket/width"},
        {"bracket@height", "side/bracket/height"},
        {"bracket@below-top", "side/bracket/below-top"},
        {"bracket@thickness", "side/bracket/thickness"},
        {"bracket@metal", "side/bracket/metal"},
        {"bracket@weld-leg", "side/bracket/weld-leg"},
        {"bracket@filler", "side/bracket/filler"},
        {"bracket@hole-over", "side/bracket/hole-over"},
        {"notch@depth", "side/notch/depth"},
        {"notch@below-top", "side/notch/below-top"},
        {"stringer@angle", "side/stringer/angle"},
        {"stringer@effective-depth", "side/stringer/effective-depth"},
        {"stringer@braced-by", "side/stringer/braced-by"},
    };
    return map;
}

}  // namespace toehold::test
