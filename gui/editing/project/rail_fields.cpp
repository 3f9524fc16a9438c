// A rail's section, how it runs, its splices and its connection to the posts.
#include "editing/fields/choices.h"
#include "editing/fields/pieces.h"
#include "editing/project/groups.h"

#include <fmt/format.h>

#include <array>
#include <sstream>

namespace toehold::editing {
namespace {

enum class Shape { square_tube, rectangular_tube, round_tube, bar, round_bar, wood };
const std::array<Word<Shape>, 6> shapes{{{Shape::square_tube, "square-tube", phrase("Square tube")},
                                         {Shape::rectangular_tube, "rectangular-tube", phrase("Rectangular tube")},
                                         {Shape::round_tube, "round-tube", phrase("Round tube")},
                                         {Shape::bar, "bar", phrase("Square or flat bar")},
                                         {Shape::round_bar, "round-bar", phrase("Round bar")},
                                         {Shape::wood, "wood", phrase("Wood")}}};
const std::array<Word<model::RailRun>, 3> runs{
    {{model::RailRun::continuous, "continuous", phrase("In one piece over its posts")},
     {model::RailRun::broken, "broken", phrase("A joint at each post")},
     {model::RailRun::between, "between", phrase("Let in between its posts")}}};

const Named wall{"wall", phrase("Wall"), phrase("Thickness of the tube's wall.")};
const Named metal{"metal", phrase("Metal"), phrase("Its strength is looked up in the catalogs.")};
const Named width{"width", phrase("Width"), phrase("Level, across the rail.")};
const Named depth{"depth", phrase("Depth"), phrase("Upright.")};

Shape shape_of(const model::RailSection& section) {
    if (const auto* const tube = std::get_if<model::RectangularTube>(&section))
        return tube->width_in == tube->depth_in ? Shape::square_tube : Shape::rectangular_tube;
    if (const auto* const bar = std::get_if<model::SolidBar>(&section))
        return bar->round ? Shape::round_bar : Shape::bar;
    return std::holds_alternative<model::RoundTube>(section) ? Shape::round_tube : Shape::wood;
}

/// As the field's help says.
model::RailSection started(Shape shape, const catalog::Catalog& catalog) {
    const std::string tube = id_or_first(catalog.metals, "steel-a500-b");
    const std::string bar = id_or_first(catalog.metals, "steel-a36");
    switch (shape) {
        case Shape::square_tube:
            return model::RectangularTube{2.0, 2.0, 0.125, tube};
        case Shape::rectangular_tube:
            return model::RectangularTube{2.0, 1.0, 0.125, tube};
        case Shape::round_tube:
            return model::RoundTube{1.9, 0.145, id_or_first(catalog.metals, "steel-a500-b-round")};
        case Shape::bar:
            return model::SolidBar{1.5, 0.5, false, bar};
        case Shape::round_bar:
            return model::SolidBar{1.0, 1.0, true, bar};
        case Shape::wood:
            break;
    }
    const std::string species = id_or_first(catalog.species, "southern-pine");
    const std::vector<Choice> grades = grade_choices(catalog, species);
    return model::WoodRail{5.5, 1.5, species, grades.empty() ? "no-2" : grades.front().value, "2x6"};
}

struct SectionFields {
    Form& form;
    const model::Framing& framing;

    void operator()(model::RectangularTube& tube) const {
        if (tube.width_in == tube.depth_in) {
            const std::size_t before = form.entries().size();
            form.length({"width", phrase("Width"), phrase("Outside, both ways.")}, tube.width_in);
            form.after(before, [&tube] { tube.depth_in = tube.width_in; });
        } else {
            form.length(width, tube.width_in);
            form.length(depth, tube.depth_in);
        }
        form.length(wall, tube.wall_in);
        form.pick(metal, tube.metal, row_choices(form.catalog().metals));
    }
    void operator()(model::RoundTube& tube) const {
        form.length({"diameter", phrase("Diameter"), phrase("Outside.")}, tube.diameter_in);
        form.length(wall, tube.wall_in);
        form.pick(metal, tube.metal, row_choices(form.catalog().metals));
    }
    void operator()(model::SolidBar& bar) const {
        if (bar.round) {
            const std::size_t before = form.entries().size();
            form.length({"diameter", phrase("Diameter"), phrase("Of the bar.")}, bar.width_in);
            form.after(before, [&bar] { bar.depth_in = bar.width_in; });
        } else {
            form.length(width, bar.width_in);
            form.length(depth, bar.depth_in);
        }
        form.pick(metal, bar.metal, row_choices(form.catalog().metals));
    }
    void operator()(model::WoodRail& wood) const {
        form.length(width, wood.width_in);
        form.length(depth, wood.depth_in);
        wood_fields(form, wood.species, wood.grade, framing.materials);
    }
};

void section_fields(Form& form, model::RailSection& section, const model::Framing& framing) {
    static const Named name{"shape", phrase("Section"),
                            phrase("Another shape begins as a 2 in square tube, a 2 by 1 in tube, a 1.9 in round tube, "
                                   "a 1 1/2 by 1/2 in bar, a 1 in round bar, or a 2x6 lying flat.")};
    std::string now;
    std::vector<Choice> choices;
    for (const Word<Shape>& word : shapes) {
        if (word.value == shape_of(section)) now = word.word;
        choices.push_back({word.word, word.label});
    }
    form.kind(name, now, choices, [&section, &catalog = form.catalog()](const std::string& chosen) {
        for (const Word<Shape>& word : shapes) {
            if (word.word == chosen) section = started(word.value, catalog);
        }
    });
    std::visit(SectionFields{form, framing}, section);
}

/// Lengths with commas between them.
void splices_field(Form& form, std::vector<double>& splices_in) {
    Field field = form.fresh({"splices", phrase("Splices"),
                              phrase("Joints that carry force and no moment: along the rail in plan from the first "
                                     "post, with commas between them. Only of a rail in one piece. Empty: none.")},
                             FieldKind::text);
    field.may_be_empty = true;
    for (const double splice : splices_in) {
        if (!field.value.empty()) field.value += ", ";
        field.value += shown(splice, units::Kind::length, form.system());
    }
    form.add(std::move(field), [&splices_in, system = form.system()](const std::string& text) -> Outcome {
        std::vector<double> read;
        std::istringstream parts(text);
        for (std::string part; std::getline(parts, part, ',');) {
            if (trimmed(part).empty()) continue;
            const Reading<double> one =
                read_quantity(phrase("Splices"), part, units::Kind::length, system, Range::not_negative);
            if (!one.value) return {one.refusal};
            read.push_back(*one.value);
        }
        splices_in = std::move(read);
        return {};
    });
}

void connection_fields_of(Form& form, model::Rail& rail, const std::string& path, const std::string& line) {
    static const Named described{"connection-described", phrase("Connection described"),
                                 phrase("Of the rail to each post. It begins without a value: what is not given is no "
                                        "evidence, and the check says so.")};
    model::RailConnection start;
    start.name = "connection not yet named";
    form.presence(described, rail.connection, start);
    if (!rail.connection) return;
    model::RailConnection& values = *rail.connection;
    form.at({path + "/connection", {}, phrase("Guard line {}: connection to the posts", line)});
    form.required_text({"name", phrase("Name"), phrase("What it is made of.")}, values.name);
    form.text({"report", phrase("Report"),
               phrase("The evaluation report or design its values are from; required as soon as one is given.")},
              values.report);
    form.given({"across", phrase("Allowable across"), phrase("Level, square to the rail. Empty: no evidence.")},
               values.across_lb, units::Kind::force);
    form.given({"along", phrase("Allowable along"), phrase("Level, along the rail. Empty: no evidence.")},
               values.along_lb, units::Kind::force);
    form.given({"vertical", phrase("Allowable vertical"), phrase("Up or down, the lesser. Empty: no evidence.")},
               values.vertical_lb, units::Kind::force);
    form.optional_quantity(
        {"stiffness", phrase("Stiffness"), phrase("Level, either way. Empty: taken as rigid, which the review says.")},
        values.stiffness_lb_per_in, units::Kind::force_per_length);
}

}  // namespace

void rail_fields(Form& form, model::Rail& rail, const std::string& path, const model::Project& project,
                 const std::string& line) {
    form.at({path, {}, phrase("Guard line {}: rail", line)});
    section_fields(form, rail.section, project.framing);
    form.word({"run", phrase("Runs"), phrase("Whether the rail carries moment past its posts.")}, rail.run, runs);
    form.yes_no({"corners-rigid", phrase("Corners carry moment"),
                 phrase("Welded, or mitered and joined, so that the rail carries moment in plan round its corners. "
                        "Only of a rail in one piece. No: every corner is a hinge.")},
                rail.corners_rigid);
    splices_field(form, rail.splices_in);
    connection_fields_of(form, rail, path, line);
}

}  // namespace toehold::editing
