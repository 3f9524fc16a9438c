#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/fields/threads.h"

namespace toehold::editing {
namespace {

using units::Kind;

const std::vector<Choice>& kinds() {
    static const std::vector<Choice> choices{{"lag-screw", phrase("Lag screw")},
                                             {"wood-screw", phrase("Wood screw")},
                                             {"through-bolt", phrase("Through-bolt")},
                                             {"reported-fastener", phrase("Fastener with values from a report")}};
    return choices;
}

/// What one kind of fastener passes on to the next.
struct Size {
    double diameter_in = 0.375, length_in = 6.0;
};

template <class Row>
void take_diameter(Size& size, const std::vector<Row>& rows, const std::string& id) {
    if (const Row* const row = catalog::find(rows, id)) size.diameter_in = row->diameter_in;
}

Size size_of(const model::Fastener& fastener, const catalog::Catalog& catalog) {
    Size size;
    if (const auto* const lag = std::get_if<model::LagScrew>(&fastener)) {
        take_diameter(size, catalog.lag_screws, lag->size);
        size.length_in = lag->length_in;
    } else if (const auto* const screw = std::get_if<model::WoodScrew>(&fastener)) {
        take_diameter(size, catalog.wood_screws, screw->size);
        size.length_in = screw->length_in;
    } else if (const auto* const bolt = std::get_if<model::ThroughBolt>(&fastener)) {
        take_diameter(size, catalog.bolts, bolt->size);
    } else if (const auto* const reported = std::get_if<model::ReportedFastener>(&fastener)) {
        size = {reported->diameter_in, reported->length_in};
    }
    return size;
}

template <class Row>
std::string size_id(const std::vector<Row>& rows, double diameter_in, const std::string& otherwise) {
    const Row* const row = nearest_size(rows, diameter_in);
    return row == nullptr ? otherwise : row->id;
}

/// The widest round washer that goes with the bolt, so that the wood is crushed last.
std::string washer_for(const catalog::Catalog& catalog, double diameter_in) {
    const catalog::WasherSize* best = nullptr;
    for (const catalog::WasherSize& washer : catalog.washers) {
        constexpr double loose_in = 0.15;
        const double play_in = washer.hole_diameter_in - diameter_in;
        if (play_in < 0.0 || play_in > loose_in) continue;
        if (best == nullptr || washer.outside_diameter_in > best->outside_diameter_in) best = &washer;
    }
    return best == nullptr ? id_or_first(catalog.washers, "washer-wide-1/2") : best->id;
}

double bolt_diameter(const model::ThroughBolt& bolt, const catalog::Catalog& catalog) {
    Size size;
    take_diameter(size, catalog.bolts, bolt.size);
    return size.diameter_in;
}

model::Fastener start_fastener(const std::string& kind, const Size& size, const catalog::Catalog& catalog) {
    if (kind == "lag-screw") {
        return model::LagScrew{size_id(catalog.lag_screws, size.diameter_in, "lag-3/8"), size.length_in, std::nullopt};
    }
    if (kind == "wood-screw") {
        return model::WoodScrew{size_id(catalog.wood_screws, size.diameter_in, "wood-screw-14"), size.length_in,
                                std::nullopt};
    }
    if (kind == "through-bolt") {
        model::ThroughBolt bolt{
            size_id(catalog.bolts, size.diameter_in, "bolt-3/8"), id_or_first(catalog.bolt_grades, "a307"), {}};
        bolt.below = model::Washer{washer_for(catalog, bolt_diameter(bolt, catalog))};
        return bolt;
    }
    model::ReportedFastener fastener;
    fastener.name = "Fastener of a report";
    fastener.diameter_in = size.diameter_in;
    fastener.length_in = size.length_in;
    constexpr double threaded = 2.0 / 3.0;
    fastener.thread_length_in = threaded * size.length_in;
    return fastener;
}

const Named fastener_length{"length", phrase("Length"), phrase("Under the head, tip included.")};

void kind_fields(Form& form, model::LagScrew& screw, bool /*level*/) {
    form.pick({"size", phrase("Size"), phrase("Of the lag screw.")}, screw.size,
              row_choices(form.catalog().lag_screws));
    form.length(fastener_length, screw.length_in);
    form.optional_quantity({"thread", phrase("Thread length"),
                            phrase("Tip included. Empty: the least that the standard gives for the length.")},
                           screw.thread_length_in, Kind::length);
}

void kind_fields(Form& form, model::WoodScrew& screw, bool /*level*/) {
    form.pick({"size", phrase("Size"), phrase("Of the wood screw.")}, screw.size,
              row_choices(form.catalog().wood_screws));
    form.length(fastener_length, screw.length_in);
    form.optional_quantity(
        {"thread", phrase("Thread length"), phrase("Tip included. Empty: two thirds of the length.")},
        screw.thread_length_in, Kind::length);
}

void backing_fields(Form& form, model::BackingPlate& plate, bool level) {
    form.length({"backing-width", phrase("Backing plate width"), phrase("Along the rail.")}, plate.width_in);
    form.length({"backing-depth", phrase("Backing plate depth"),
                 level ? phrase("Up the member's face.") : phrase("Square to the rail.")},
                plate.depth_in);
    form.length({"backing-thickness", phrase("Backing plate thickness"), phrase("Of the plate under the nut.")},
                plate.thickness_in);
    form.pick({"backing-metal", phrase("Backing plate metal"), phrase("Of the plate under the nut.")}, plate.metal,
              row_choices(form.catalog().metals));
}

const std::vector<Choice>& lower_shapes() {
    static const std::vector<Choice> choices{
        {"plate", phrase("Flat plate")}, {"angle", phrase("Angle")}, {"channel", phrase("Channel")}};
    return choices;
}

void lower_plate_fields(Form& form, model::LowerPlate& plate) {
    form.kind({"lower-shape", phrase("Lower plate shape"),
               phrase("Its face lies against the wood; what stands off it points down.")},
              lower_shapes()[static_cast<std::size_t>(plate.shape)].value, lower_shapes(),
              [&plate](const std::string& chosen) {
                  plate.shape = chosen == "angle"     ? model::LowerShape::angle
                                : chosen == "channel" ? model::LowerShape::channel
                                                      : model::LowerShape::plate;
                  constexpr double start_leg_in = 2.0;
                  plate.leg_in = plate.shape == model::LowerShape::plate ? 0.0 : start_leg_in;
              });
    form.place({"lower-x", phrase("Lower plate x"), phrase("Center of its face along the rail.")}, plate.center.x_in);
    form.place({"lower-y", phrase("Lower plate y"), phrase("Center of its face outward.")}, plate.center.y_in);
    form.length({"lower-width", phrase("Lower plate width"), phrase("Of its face, along the rail.")}, plate.width_in);
    form.length({"lower-depth", phrase("Lower plate depth"), phrase("Of its face, square to the rail.")},
                plate.depth_in);
    form.length({"lower-thickness", phrase("Lower plate thickness"), phrase("Of face and legs.")}, plate.thickness_in);
    if (plate.shape != model::LowerShape::plate) {
        form.length({"lower-leg", phrase("Lower plate leg"), phrase("From the face to the tip, overall.")},
                    plate.leg_in);
    }
    form.pick({"lower-metal", phrase("Lower plate metal"), phrase("Of the plate below.")}, plate.metal,
              row_choices(form.catalog().metals));
}

/// What may be under the nut; one plate below all bolts only of bolts that stand upright.
std::vector<Choice> under_nut(bool level) {
    std::vector<Choice> choices{{"none", phrase("Nothing: the wood itself")},
                                {"washer-below", phrase("Washer")},
                                {"backing-plate", phrase("Backing plate")}};
    if (!level) choices.push_back({"lower-plate", phrase("One plate below all bolts")});
    return choices;
}

Phrase under_nut_help(bool level) {
    if (level) {
        return phrase(
            "What the nut bears on behind the member. A washer begins as the widest for the bolt, a backing "
            "plate as 2 1/2 in square, 1/4 in thick.");
    }
    return phrase(
        "What the nut bears on below. A washer begins as the widest for the bolt, a backing plate as "
        "2 1/2 in square, 1/4 in thick, a lower plate as 8 x 2 1/2 x 1/4 in under the post.");
}

void below_field(Form& form, model::ThroughBolt& bolt, bool level) {
    const bool washer = std::holds_alternative<model::Washer>(bolt.below);
    const bool backing = std::holds_alternative<model::BackingPlate>(bolt.below);
    const bool lower = std::holds_alternative<model::LowerPlate>(bolt.below);
    const std::string now = washer ? "washer-below" : backing ? "backing-plate" : lower ? "lower-plate" : "none";
    form.kind({"below", phrase("Under the nut"), under_nut_help(level)}, now, under_nut(level),
              [&bolt, &catalog = form.catalog()](const std::string& chosen) {
                  bolt.below = std::monostate{};
                  if (chosen == "washer-below") {
                      bolt.below = model::Washer{washer_for(catalog, bolt_diameter(bolt, catalog))};
                  } else if (chosen == "backing-plate") {
                      bolt.below = model::BackingPlate{2.5, 2.5, 0.25, id_or_first(catalog.metals, "steel-a36")};
                  } else if (chosen == "lower-plate") {
                      bolt.below = model::LowerPlate{
                          model::LowerShape::plate, {}, 8.0, 2.5, 0.25, 0.0, id_or_first(catalog.metals, "steel-a36")};
                  }
              });
}

void kind_fields(Form& form, model::ThroughBolt& bolt, bool level) {
    form.pick({"size", phrase("Size"), phrase("Of the bolt, which is as long as it must be.")}, bolt.size,
              row_choices(form.catalog().bolts));
    form.pick({"grade", phrase("Grade"), phrase("Of the bolt's steel.")}, bolt.grade,
              row_choices(form.catalog().bolt_grades));
    form.optional_quantity({"length", phrase("Length"), phrase("Under the head. Empty: as long as it must be.")},
                           bolt.length_in, Kind::length);
    form.optional_quantity({"thread", phrase("Thread length"),
                            phrase("Of a bolt whose length is given. Empty: the standard's for the length.")},
                           bolt.thread_length_in, Kind::length);
    form.optional_word({"threads", phrase("Threads"),
                        phrase("Whether they lie at the shear plane, where no length says it. Empty: they do.")},
                       bolt.threads, threads_words);
    below_field(form, bolt, level);
    if (auto* const washer = std::get_if<model::Washer>(&bolt.below)) {
        form.pick({"washer-below", phrase("Washer below"), phrase("Between the wood and the nut.")}, washer->size,
                  row_choices(form.catalog().washers));
    }
    if (auto* const plate = std::get_if<model::BackingPlate>(&bolt.below)) backing_fields(form, *plate, level);
    if (auto* const plate = std::get_if<model::LowerPlate>(&bolt.below)) lower_plate_fields(form, *plate);
}

void kind_fields(Form& form, model::ReportedFastener& fastener, bool /*level*/) {
    form.required_text({"name", phrase("Name"), phrase("Your own name for the fastener.")}, fastener.name);
    form.text(
        {"report", phrase("Report"), phrase("Report, edition and table the values are from. Empty: not specified.")},
        fastener.report);
    form.length({"diameter", phrase("Diameter"), phrase("Outside, of the thread.")}, fastener.diameter_in);
    form.length(fastener_length, fastener.length_in);
    form.length({"thread", phrase("Thread length"), phrase("Tip included.")}, fastener.thread_length_in);
    form.given({"withdrawal", phrase("Allowable withdrawal"),
                phrase("ASD, for each length of thread in the block. Empty: the report gives none.")},
               fastener.withdrawal_lb_per_in, Kind::force_per_length);
    form.given(
        {"tension", phrase("Allowable tension"), phrase("ASD, of the fastener itself. Empty: the report gives none.")},
        fastener.tension_lb, Kind::force);
    form.given({"lateral", phrase("Allowable lateral force"),
                phrase("ASD, as installed with its gap. Empty: the report gives none.")},
               fastener.lateral_lb, Kind::force);
    form.length({"minimum-penetration", phrase("Least penetration"),
                 phrase("Into the block, by the report; 0 where it asks for none.")},
                fastener.minimum_penetration_in, Range::not_negative);
    form.given({"minimum-edge", phrase("Least edge distance"), phrase("Empty: the report gives none.")},
               fastener.minimum_edge_in, Kind::length);
    form.given({"minimum-end", phrase("Least end distance"), phrase("Empty: the report gives none.")},
               fastener.minimum_end_in, Kind::length);
    form.given({"minimum-spacing", phrase("Least spacing"), phrase("Empty: the report gives none.")},
               fastener.minimum_spacing_in, Kind::length);
}

}  // namespace

void fastener_fields(Form& form, model::AnchorGroup& group, bool level) {
    form.kind({"fastener", phrase("Fastener"),
               phrase("Another kind begins with the size nearest and the length as it was, 6 in after a bolt; a "
                      "bolt with a washer below; a reported fastener without any allowable value.")},
              kinds()[group.fastener.index()].value, kinds(),
              [&group, &catalog = form.catalog()](const std::string& chosen) {
                  group.fastener = start_fastener(chosen, size_of(group.fastener, catalog), catalog);
              });
    std::visit([&](auto& fastener) { kind_fields(form, fastener, level); }, group.fastener);
}

}  // namespace toehold::editing
