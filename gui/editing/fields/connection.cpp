#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/fields/threads.h"

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

using units::Kind;
using EndGrainKind = model::EndGrainFasteners::Kind;
using AngleKind = model::SideAngles::Kind;

const std::array<Word<AngleKind>, 3> angle_kinds{{{AngleKind::wood_screw, "wood-screw", phrase("Wood screws")},
                                                  {AngleKind::lag_screw, "lag-screw", phrase("Lag screws")},
                                                  {AngleKind::bolt, "bolt", phrase("Bolts through the wood")}}};

const std::vector<Choice>& connection_kinds() {
    static const std::vector<Choice> choices{
        {"none", phrase("Nothing described")},
        {"nails", phrase("Nails into the end grain")},
        {"screws", phrase("Screws into the end grain")},
        {"structural-screws", phrase("Structural screws into the end grain, by their report")},
        {"toe-nails", phrase("Toe-nails")},
        {"angles", phrase("Steel angles")},
        {"connector", phrase("Hardware with values from a report")},
    };
    return choices;
}

struct WordFor {
    const char* operator()(std::monostate /*nothing described*/) const { return "none"; }
    const char* operator()(const model::EndGrainFasteners& fasteners) const {
        if (fasteners.kind == EndGrainKind::structural_screw) return "structural-screws";
        return fasteners.kind == EndGrainKind::nail ? "nails" : "screws";
    }
    const char* operator()(const model::ToeNails& /*nails*/) const { return "toe-nails"; }
    const char* operator()(const model::SideAngles& /*angles*/) const { return "angles"; }
    const char* operator()(const model::ReportedConnector& /*connector*/) const { return "connector"; }
};

model::SideAngles start_angles(double depth_in, const catalog::Catalog& catalog) {
    model::SideAngles angles;
    angles.thickness_in = 0.25;
    angles.metal = id_or_first(catalog.metals, "steel-a36");
    angles.kind = AngleKind::bolt;
    angles.diameter_in = 0.375;
    angles.per_leg = 2;
    angles.spacing_in = 0.25 * depth_in;
    angles.gauge_in = 1.5;
    return angles;
}

/// Common sizes, spread over half the member's depth so that all of them meet it.
model::EndConnection start_connection(const std::string& chosen, double depth_in, const catalog::Catalog& catalog) {
    const double spread_in = 0.5 * depth_in;
    if (chosen == "nails") return model::EndGrainFasteners{EndGrainKind::nail, 0.148, 3.0, 3, spread_in};
    if (chosen == "screws") return model::EndGrainFasteners{EndGrainKind::wood_screw, 0.19, 3.0, 3, spread_in};
    if (chosen == "structural-screws") {
        model::EndGrainFasteners screws{EndGrainKind::structural_screw, 0.25, 4.5, 2, spread_in};
        screws.reported.report = "report not yet named";
        screws.reported.conditions = "conditions not yet named";
        return screws;
    }
    if (chosen == "toe-nails") return model::ToeNails{0.131, 2.5, 4, spread_in};
    if (chosen == "angles") return start_angles(depth_in, catalog);
    if (chosen != "connector") return std::monostate{};
    model::ReportedConnector connector;
    connector.name = "Connector of a report";
    return connector;
}

const Named diameter{"diameter", phrase("Diameter"), phrase("Of one fastener.")};
const Named length{"length", phrase("Length"), phrase("Of one fastener.")};

void kind_fields(Form& /*form*/, std::monostate& /*nothing described*/) {}

void reported_fields(Form& form, model::ReportedEndGrain& reported) {
    form.given({"lateral", phrase("Allowable lateral"), phrase("ASD, of one screw in end grain. Empty: none.")},
               reported.lateral_lb, Kind::force);
    form.given({"withdrawal", phrase("Allowable withdrawal"), phrase("ASD, of one screw from end grain. Empty: none.")},
               reported.withdrawal_lb, Kind::force);
    form.required_text({"report", phrase("Report"), phrase("Where the values come from.")}, reported.report);
    form.required_text(
        {"conditions", phrase("Conditions"), phrase("What the values hold for: load duration, moisture, species.")},
        reported.conditions);
}

void kind_fields(Form& form, model::EndGrainFasteners& fasteners) {
    form.length(diameter, fasteners.diameter_in);
    form.length(length, fasteners.length_in);
    form.count({"count", phrase("Number"), phrase("On one upright line.")}, fasteners.count, {1, 60});
    form.zero_if_empty(
        {"spread", phrase("Spread"), phrase("Between the outermost two. Empty: 0, as with a single one.")},
        fasteners.spread_in, Kind::length, Range::not_negative);
    if (fasteners.kind == EndGrainKind::structural_screw) reported_fields(form, fasteners.reported);
}

void kind_fields(Form& form, model::ToeNails& nails) {
    form.length(diameter, nails.diameter_in);
    form.length(length, nails.length_in);
    form.count({"count", phrase("Number"), phrase("Both sides together.")}, nails.count, {1, 60});
    form.zero_if_empty(
        {"spread", phrase("Spread"), phrase("Between the outermost two of one side, upright. Empty: 0, one a side.")},
        nails.spread_in, Kind::length, Range::not_negative);
}

void angle_kind(Form& form, model::SideAngles& angles) {
    std::string now;
    std::vector<Choice> choices;
    for (const Word<AngleKind>& word : angle_kinds) {
        if (word.value == angles.kind) now = word.word;
        choices.push_back({word.word, word.label});
    }
    form.kind({"kind", phrase("Fasteners"),
               phrase("In each leg. Screws begin 1 1/2 in long; a bolt goes through the wood and has no length.")},
              now, choices, [&angles](const std::string& chosen) {
                  for (const Word<AngleKind>& word : angle_kinds) {
                      if (word.word == chosen) angles.kind = word.value;
                  }
                  if (angles.kind == AngleKind::wood_screw) angles.threads.reset();
                  if (angles.kind == AngleKind::bolt) {
                      angles.length_in = 0.0;
                  } else if (angles.length_in == 0.0) {
                      angles.length_in = 1.5;
                  }
              });
}

void kind_fields(Form& form, model::SideAngles& angles) {
    form.count({"sides", phrase("Sides"), phrase("1, or 2: one angle on each side of the member.")}, angles.sides,
               {1, 2});
    form.length({"thickness", phrase("Angle thickness"), phrase("Of its legs.")}, angles.thickness_in);
    form.pick({"metal", phrase("Angle metal"), phrase("Its strength is looked up in the catalogs.")}, angles.metal,
              row_choices(form.catalog().metals));
    angle_kind(form, angles);
    form.length(diameter, angles.diameter_in);
    if (angles.kind != AngleKind::bolt) {
        form.length({"length", phrase("Length"), phrase("Under the head.")}, angles.length_in);
    }
    form.count({"per-leg", phrase("In each leg"), phrase("Fasteners on one upright line.")}, angles.per_leg, {1, 60});
    form.given({"spacing", phrase("Spacing"), phrase("Between neighbours on that line. Empty: only one.")},
               angles.spacing_in, Kind::length);
    form.length({"gauge", phrase("Gauge"), phrase("From the corner to the line, in both legs.")}, angles.gauge_in);
    if (angles.kind != AngleKind::wood_screw) {
        form.optional_word(
            {"threads", phrase("Threads"), phrase("Whether they lie at the shear plane. Empty: they do.")},
            angles.threads, threads_words);
    }
}

void kind_fields(Form& form, model::ReportedConnector& connector) {
    form.required_text({"name", phrase("Name"), phrase("Your own name for the hardware.")}, connector.name);
    form.text({"report", phrase("Report"), phrase("Where the values come from. Empty: not specified.")},
              connector.report);
    form.given({"uplift", phrase("Allowable uplift"), phrase("ASD. Empty: it resists none.")}, connector.uplift_lb,
               Kind::force);
    form.given({"down", phrase("Allowable downward"), phrase("ASD. Empty: it resists none.")}, connector.down_lb,
               Kind::force);
    form.given(
        {"lateral", phrase("Allowable lateral"), phrase("ASD, horizontal across the member. Empty: it resists none.")},
        connector.lateral_lb, Kind::force);
    form.given({"pull", phrase("Allowable tension"), phrase("ASD, away along the member. Empty: it resists none.")},
               connector.pull_lb, Kind::force);
    form.given({"couple-arm", phrase("Couple arm"),
                phrase("Between its two lines, one on each side of the member. Empty: it resists no twisting.")},
               connector.couple_arm_in, Kind::length);
    form.given({"height", phrase("Height of the couple"),
                phrase("Between the tension and the compressed edge, that keeps the two members square. Empty: the end "
                       "turns freely.")},
               connector.height_in, Kind::length);
    form.optional_quantity(
        {"stiffness", phrase("Stiffness"), phrase("In the directions with a value. Empty: each value over 1/8 in.")},
        connector.stiffness_lb_per_in, Kind::force_per_length);
    form.optional_quantity({"from-top", phrase("Top to highest fastener"),
                            phrase("From the member's top down to the hardware's highest fastener in it; 0 where it "
                                   "hooks over the top. Empty: not specified.")},
                           connector.from_top_in, Kind::length, Range::not_negative);
    form.optional_quantity({"from-bottom", phrase("Bottom to lowest fastener"),
                            phrase("From the member's bottom up to the hardware's lowest fastener in it; 0 where it "
                                   "has a seat. Empty: not specified.")},
                           connector.from_bottom_in, Kind::length, Range::not_negative);
    form.yes_no(
        {"chosen", phrase("Chosen"),
         phrase("Whether these are the values of hardware that is chosen; else the least its report must give.")},
        connector.chosen);
}

}  // namespace

void connection_fields(Form& form, model::EndConnection& connection, double depth_in) {
    form.kind({"connection", phrase("Connection"),
               phrase("What joins the end to what holds it. Another kind begins with sizes of common practice, for "
                      "you to replace; hardware without any value.")},
              std::visit(WordFor{}, connection), connection_kinds(),
              [&connection, depth_in, &catalog = form.catalog()](const std::string& chosen) {
                  connection = start_connection(chosen, depth_in, catalog);
              });
    std::visit([&](auto& kind) { kind_fields(form, kind); }, connection);
}

}  // namespace toehold::editing
