#include "xml/line/rail_section.h"

#include "xml/detail/metal_section.h"
#include "xml/detail/wood_section.h"

#include <array>

namespace toehold::xml {
namespace {

enum class RailShape { square_tube, rectangular_tube, round_tube, bar, round_bar, wood };
constexpr std::array<Word<RailShape>, 6> rail_shapes{{{"square-tube", RailShape::square_tube},
                                                      {"rectangular-tube", RailShape::rectangular_tube},
                                                      {"round-tube", RailShape::round_tube},
                                                      {"bar", RailShape::bar},
                                                      {"round-bar", RailShape::round_bar},
                                                      {"wood", RailShape::wood}}};

model::WoodRail read_wood_rail(ElementReader& reader) {
    model::WoodRail rail;
    set_section(rail, read_framing_section(reader));
    return rail;
}

struct WriteRail {
    Element& rail;

    void operator()(const model::RectangularTube& tube) const {
        shape(tube.width_in == tube.depth_in ? RailShape::square_tube : RailShape::rectangular_tube);
        write_tube(rail, tube);
    }
    void operator()(const model::RoundTube& tube) const {
        shape(RailShape::round_tube);
        write_tube(rail, tube);
    }
    void operator()(const model::SolidBar& bar) const {
        shape(bar.round ? RailShape::round_bar : RailShape::bar);
        write_bar(rail, bar);
    }
    void operator()(const model::WoodRail& wood) const {
        shape(RailShape::wood);
        write_framing_section(rail, section_of(wood));
    }
    void shape(RailShape value) const { rail.text("shape", word_for<RailShape>(value, rail_shapes)); }
};

}  // namespace

model::RailSection read_rail_section(ElementReader& reader) {
    const std::optional<RailShape> shape = reader.required_choice<RailShape>("shape", rail_shapes);
    if (!shape) {
        reader.ignore_rest();
        return {};
    }
    switch (*shape) {
        case RailShape::square_tube:
            return read_square_tube(reader);
        case RailShape::rectangular_tube:
            return read_rectangular_tube(reader);
        case RailShape::round_tube:
            return read_round_tube(reader);
        case RailShape::bar:
            return read_bar(reader);
        case RailShape::round_bar:
            return read_round_bar(reader);
        case RailShape::wood:
            break;
    }
    return read_wood_rail(reader);
}

void write_rail_section(Element& rail, const model::RailSection& section) { std::visit(WriteRail{rail}, section); }

}  // namespace toehold::xml
