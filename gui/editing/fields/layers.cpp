#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"

#include <fmt/format.h>

namespace toehold::editing {
namespace {

using units::Kind;

// The smallest common deck screw, so that nothing is counted that may not be there.
constexpr double start_screw_diameter_in = 0.164;  // No. 8
constexpr double start_screw_length_in = 2.5;
constexpr double start_board_in = 5.5;

std::string shim_material(const catalog::Catalog& catalog) { return id_or_first(catalog.decking, "shim-hardwood"); }

void fastening_fields(Form& form, model::DeckingFastening& fastening, const std::string& path) {
    form.at({path + "/fasteners", {model::PartKind::decking}, phrase("Decking fasteners")});
    form.length({"diameter", phrase("Diameter"), phrase("Of one screw or nail.")}, fastening.diameter_in);
    form.length({"length", phrase("Length"), phrase("Of one screw or nail.")}, fastening.length_in);
    form.count({"per-crossing", phrase("At each crossing"), phrase("Where one board crosses one joist.")},
               fastening.per_crossing, {1, 20});
    form.length({"board", phrase("Board width"), phrase("Face width of one board.")}, fastening.board_width_in);
    form.given({"lateral", phrase("Allowable lateral force"),
                phrase("ASD, of one, where no standard gives it. Empty: not given; wood boards need none.")},
               fastening.lateral_lb, Kind::force);
    form.text({"report", phrase("Report"), phrase("Where that force comes from. Empty: not specified.")},
              fastening.report);
}

const std::vector<Choice>& packing_shapes() {
    static const std::vector<Choice> choices{{"rectangle", phrase("Rectangle")}, {"round", phrase("Round")}};
    return choices;
}

void packing_fields(Form& form, model::Packing& packing) {
    form.at({"layers/packing", {model::PartKind::packing}, phrase("Packing through the boards")});
    const bool round = packing.shape == model::PackingShape::round;
    form.kind({"shape", phrase("Shape"), phrase("Of each piece, seen from above.")}, round ? "round" : "rectangle",
              packing_shapes(), [&packing](const std::string& chosen) {
                  packing.shape = chosen == "round" ? model::PackingShape::round : model::PackingShape::rectangle;
                  packing.depth_in = chosen == "round" ? 0.0 : packing.width_in;
              });
    if (round) {
        form.length({"diameter", phrase("Diameter"), phrase("Of each piece.")}, packing.width_in);
    } else {
        form.length({"width", phrase("Width"), phrase("Along the rail.")}, packing.width_in);
        form.length({"depth", phrase("Depth"), phrase("Square to the rail.")}, packing.depth_in);
    }
    form.pick({"material", phrase("Material"), phrase("What the packing is of.")}, packing.material,
              row_choices(form.catalog().decking));
    form.given({"hole", phrase("Hole"), phrase("For its anchor. Empty: 1/16 in over the anchor.")}, packing.hole_in,
               Kind::length);
    form.list(
        {"place-count", phrase("Number of places"),
         phrase("0: one about every anchor. A new one is at the post's center; a smaller number takes the last.")},
        packing.places.size(), {0, 50},
        [&packing] {
            packing.places.emplace_back();
            return Phrase{};
        },
        [&packing] { packing.places.pop_back(); });
    for (std::size_t index = 0; index < packing.places.size(); ++index) {
        model::Position& place = packing.places[index];
        form.at({fmt::format("layers/packing/at[{}]", index + 1),
                 {model::PartKind::packing},
                 phrase("Packing {}", index + 1)});
        form.place({"x", phrase("x"), phrase("Its center along the rail, from the post's center.")}, place.x_in);
        form.place({"y", phrase("y"), phrase("Its center outward, from the post's center.")}, place.y_in);
    }
}

void one_shim(Form& form, model::Shim& shim, std::size_t number) {
    form.at({fmt::format("layers/shim[{}]", number), model::shim_part(number - 1), phrase("Shim {}", number)});
    form.pick({"material", phrase("Material"), phrase("What the shim is of.")}, shim.material,
              row_choices(form.catalog().decking));
    form.length({"thickness", phrase("Thickness"), phrase("Of the shim, as packed.")}, shim.thickness_in);
}

}  // namespace

void decking_fields(Form& form, model::Decking& decking, const std::string& path) {
    form.at({path, {model::PartKind::decking}, phrase("Decking")});
    form.pick({"material", phrase("Material"), phrase("What the boards are of.")}, decking.material,
              row_choices(form.catalog().decking));
    board_size_field(form, decking);
    form.length({"thickness", phrase("Thickness"), phrase("Actual, of the boards.")}, decking.thickness_in);
    form.text({"evidence", phrase("Evidence"),
               phrase("Standard or instructions the boards are installed to. Empty: not specified.")},
              decking.evidence);
    form.given(
        {"bearing", phrase("Allowable bearing"),
         phrase("ASD, of a plate on the boards, from their evaluation report. Empty: the standard's for wood, none "
                "for other boards.")},
        decking.bearing_psi, Kind::stress);
    form.given(
        {"modulus", phrase("Modulus through the thickness"), phrase("From the manufacturer. Empty: the catalog's.")},
        decking.modulus_psi, Kind::stress);
    form.text({"report", phrase("Report"), phrase("Where bearing and modulus come from. Empty: not specified.")},
              decking.report);
    form.presence({"fastened", phrase("Fastened to the joists"),
                   phrase("Whether what holds the boards is described; begins as two No. 8 screws, 2 1/2 in, in "
                          "5 1/2 in boards. No: the boards count as lying loose.")},
                  decking.fastening,
                  model::DeckingFastening{start_screw_diameter_in, start_screw_length_in, 2, start_board_in, 0.0, {}});
    if (decking.fastening) fastening_fields(form, *decking.fastening, path);
}

void layer_fields(Form& form, model::Layers& layers) {
    form.at({"layers", {model::PartKind::decking}, phrase("Layers")});
    form.presence({"decking-given", phrase("Decking under the plate"),
                   phrase("Begins as 1 in wood boards. No: the plate stands on the framing itself.")},
                  layers.decking,
                  model::Decking{id_or_first(form.catalog().decking, "wood-southern-pine"), 1.0, {}, std::nullopt});
    if (layers.decking) {
        form.presence({"packing-given", phrase("Packing through the boards"),
                       phrase("Spacers in the boards that the plate bears on. Begins as 2 in square steel about every "
                              "anchor. No: the plate bears on the boards.")},
                      layers.packing,
                      model::Packing{model::PackingShape::rectangle,
                                     2.0,
                                     2.0,
                                     id_or_first(form.catalog().decking, "packing-steel"),
                                     0.0,
                                     {}});
    }
    form.list(
        {"shim-count", phrase("Number of shims"),
         phrase("Packing between the decking and the framing, from above down. A new one is 1/4 in of "
                "hardwood; a smaller number takes the lowest.")},
        layers.shims.size(), {0, 20},
        [&layers, &catalog = form.catalog()] {
            layers.shims.push_back({shim_material(catalog), 0.25});
            return Phrase{};
        },
        [&layers] { layers.shims.pop_back(); });
    if (layers.decking) decking_fields(form, *layers.decking, "layers/decking");
    if (layers.packing) packing_fields(form, *layers.packing);
    for (std::size_t index = 0; index < layers.shims.size(); ++index) one_shim(form, layers.shims[index], index + 1);
}

}  // namespace toehold::editing
