// The post: its section and, on a plate, what it stands in or on.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"
#include "editing/fields/plan_axes.h"

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

enum class Shape { square_tube, rectangular_tube, round_tube, wood, bar, round_bar, twin_bars };
const std::array<Word<Shape>, 7> shapes{{{Shape::square_tube, "square-tube", phrase("Square tube")},
                                         {Shape::rectangular_tube, "rectangular-tube", phrase("Rectangular tube")},
                                         {Shape::round_tube, "round-tube", phrase("Round tube")},
                                         {Shape::wood, "wood", phrase("Wood post in a shoe")},
                                         {Shape::bar, "bar", phrase("Square or flat bar")},
                                         {Shape::round_bar, "round-bar", phrase("Round bar")},
                                         {Shape::twin_bars, "twin-bars", phrase("Two flat bars side by side")}}};
const std::array<Word<model::StubFixing>, 3> fixings{
    {{model::StubFixing::none, "none", phrase("Not fixed")},
     {model::StubFixing::set_screws, "set-screws", phrase("Set screws")},
     {model::StubFixing::through_bolt, "through-bolt", phrase("Through-bolt")}}};
const Choice closed_shoe{"closed", phrase("Closed on all four sides")};
const std::array<Word<model::ShoeAttachment>, 2> attachments{
    {{model::ShoeAttachment::welded, "welded", phrase("Welded to the plate")},
     {model::ShoeAttachment::bolted, "bolted", phrase("Bolted to the plate")}}};

/// What a post is that is fastened by its side: two bars are not, and wood has no shoe.
bool by_its_side(const model::BaseDetail& detail) {
    return model::kind(detail.mount) == model::MountKind::side_fastened;
}

Shape shape_of(const model::Post& post) {
    if (const auto* const tube = std::get_if<model::RectangularTube>(&post)) {
        return tube->width_in == tube->depth_in ? Shape::square_tube : Shape::rectangular_tube;
    }
    if (const auto* const bar = std::get_if<model::SolidBar>(&post)) return bar->round ? Shape::round_bar : Shape::bar;
    if (std::holds_alternative<model::TwinBars>(post)) return Shape::twin_bars;
    return std::holds_alternative<model::RoundTube>(post) ? Shape::round_tube : Shape::wood;
}

/// Tubes of one standard have a grade for round ones and another for the rest.
std::string metal_of_form(const std::string& metal, bool round, const catalog::Catalog& catalog) {
    constexpr std::string_view mark = "-round";
    const bool is_round = metal.ends_with(mark);
    if (is_round == round) return metal;
    const std::string other = round ? metal + std::string(mark) : metal.substr(0, metal.size() - mark.size());
    return catalog::find(catalog.metals, other) != nullptr ? other : metal;
}

model::RectangularTube tube_of(const model::Post& post, const catalog::Catalog& catalog) {
    if (const auto* const tube = std::get_if<model::RectangularTube>(&post)) return *tube;
    if (const auto* const tube = std::get_if<model::RoundTube>(&post)) {
        return {tube->diameter_in, tube->diameter_in, tube->wall_in, metal_of_form(tube->metal, false, catalog),
                tube->certificate};
    }
    return {2.0, 2.0, 0.125, id_or_first(catalog.metals, "steel-a500-b")};
}

model::WoodPost start_wood(const catalog::Catalog& catalog) {
    const std::string species = id_or_first(catalog.species, "southern-pine");
    const std::vector<Choice> grades = grade_choices(catalog, species);
    model::WoodPost post{3.5, 3.5, species, grades.empty() ? "no-2" : grades.front().value, false, {}};
    post.shoe.width_in = post.shoe.depth_in = 4.0;
    post.shoe.wall_in = 0.1875;
    post.shoe.height_in = 4.0;
    post.shoe.metal = id_or_first(catalog.metals, "steel-a36");
    return post;
}

std::optional<model::Post> start_bars(Shape shape, const catalog::Catalog& catalog) {
    const std::string steel = id_or_first(catalog.metals, "steel-a36");
    if (shape == Shape::bar) return model::SolidBar{1.5, 1.5, false, steel};
    if (shape == Shape::round_bar) return model::SolidBar{1.5, 1.5, true, steel};
    if (shape == Shape::twin_bars) return model::TwinBars{0.5, 2.5, 1.0, model::PlanAxis::x, steel};
    return std::nullopt;
}

model::Post in_shape(const model::Post& post, Shape shape, const catalog::Catalog& catalog) {
    if (shape == Shape::wood) return start_wood(catalog);
    if (const std::optional<model::Post> bars = start_bars(shape, catalog)) return *bars;
    model::RectangularTube tube = tube_of(post, catalog);
    if (shape == Shape::round_tube) {
        return model::RoundTube{tube.width_in, tube.wall_in, metal_of_form(tube.metal, true, catalog),
                                tube.certificate};
    }
    // The model knows a square tube by its equal widths.
    constexpr double deeper = 1.5;
    tube.stub.reset();
    tube.depth_in = shape == Shape::square_tube ? tube.width_in : deeper * tube.width_in;
    return tube;
}

const Named wall{"wall", phrase("Wall"), phrase("Thickness of the tube's wall.")};
const Named metal{"metal", phrase("Metal"), phrase("Its strength is looked up in the catalogs.")};
const Named outside_width{"width", phrase("Width"), phrase("Outside, along the rail.")};
const Named outside_depth{"depth", phrase("Depth"), phrase("Outside, square to the rail.")};

void both_widths(Form& form, model::RectangularTube& tube) {
    const std::size_t before = form.entries().size();
    form.length({"width", phrase("Width"), phrase("Outside, both ways.")}, tube.width_in);
    form.after(before, [&tube] { tube.depth_in = tube.width_in; });
}

/// `start`: of the stub, where the tube stands on a plate.
template <class Tube>
void tube_parts(Form& form, Tube& tube, const std::optional<model::Stub>& start) {
    form.presence(
        {"certified", phrase("Strengths by certificate"), phrase("For metals whose standard guarantees none.")},
        tube.certificate, model::Certificate{32000.0, 48000.0, "certificate not yet named"});
    if (start) {
        form.presence(
            {"on-stub", phrase("On a stub"), phrase("Whether the post slides over a stub welded to the plate.")},
            tube.stub, *start);
    }
    if (!tube.certificate) return;
    form.at({"post/certificate", {model::PartKind::post}, phrase("Certificate")});
    form.quantity({"yield", phrase("Yield strength"), phrase("Of the metal delivered.")}, tube.certificate->yield_psi,
                  units::Kind::stress);
    form.quantity({"ultimate", phrase("Tensile strength"), phrase("Of the metal delivered.")},
                  tube.certificate->ultimate_psi, units::Kind::stress);
    form.required_text({"source", phrase("Source"), phrase("The certificate the strengths are from.")},
                       tube.certificate->source);
}

void stub_fields(Form& form, model::Stub& stub, bool round) {
    form.at({"post/stub", {model::PartKind::post}, phrase("Stub")});
    const std::size_t before = form.entries().size();
    if (round) {
        form.length({"diameter", phrase("Diameter"), phrase("Outside.")}, stub.width_in);
        form.after(before, [&stub] { stub.depth_in = stub.width_in; });
    } else {
        form.length(outside_width, stub.width_in);
        form.length(outside_depth, stub.depth_in);
    }
    form.given({"wall", phrase("Wall"), phrase("Of the stub. Empty: a solid bar.")}, stub.wall_in, units::Kind::length);
    form.length({"height", phrase("Height"), phrase("Of the stub's top above the underside of the plate.")},
                stub.height_in);
    form.pick(metal, stub.metal, row_choices(form.catalog().metals));
    form.word({"fixing", phrase("Fixing"), phrase("What keeps the post from lifting off the stub.")}, stub.fixing,
              fixings);
}

/// A solid stub with 1/16 in of play in all.
model::Stub start_stub(double inside_width_in, double inside_depth_in, const catalog::Catalog& catalog) {
    constexpr double play_in = 0.0625, height_in = 6.0, least_share = 0.9;
    const auto side = [](double inside_in) { return std::max(inside_in - play_in, least_share * inside_in); };
    return {
        side(inside_width_in),        side(inside_depth_in), 0.0, height_in, id_or_first(catalog.metals, "steel-a36"),
        model::StubFixing::set_screws};
}

/// What a post's fields depend on beside the post.
struct PostPlace {
    bool on_plate = true;  ///< and so may have a shoe or a stub
    const std::vector<model::OwnWood>& materials;
};

std::optional<model::Stub> stub_on(const PostPlace& place, double inside_width_in, double inside_depth_in,
                                   const catalog::Catalog& catalog) {
    if (!place.on_plate) return std::nullopt;
    return start_stub(inside_width_in, inside_depth_in, catalog);
}

void shape_fields(Form& form, model::RectangularTube& tube, const PostPlace& place) {
    if (tube.width_in == tube.depth_in) {
        both_widths(form, tube);
    } else {
        form.length(outside_width, tube.width_in);
        form.length(outside_depth, tube.depth_in);
    }
    form.length(wall, tube.wall_in);
    form.pick(metal, tube.metal, row_choices(form.catalog().metals));
    tube_parts(form, tube,
               stub_on(place, tube.width_in - 2.0 * tube.wall_in, tube.depth_in - 2.0 * tube.wall_in, form.catalog()));
    if (tube.stub) stub_fields(form, *tube.stub, false);
}

void shape_fields(Form& form, model::RoundTube& tube, const PostPlace& place) {
    form.length({"diameter", phrase("Diameter"), phrase("Outside.")}, tube.diameter_in);
    form.length(wall, tube.wall_in);
    form.pick(metal, tube.metal, row_choices(form.catalog().metals));
    const double inside_in = tube.diameter_in - 2.0 * tube.wall_in;
    tube_parts(form, tube, stub_on(place, inside_in, inside_in, form.catalog()));
    if (tube.stub) stub_fields(form, *tube.stub, true);
}

void shape_fields(Form& form, model::SolidBar& bar, const PostPlace& /*place*/) {
    if (bar.round) {
        const std::size_t before = form.entries().size();
        form.length({"diameter", phrase("Diameter"), phrase("Of the bar.")}, bar.width_in);
        form.after(before, [&bar] { bar.depth_in = bar.width_in; });
    } else {
        form.length({"width", phrase("Width"), phrase("Along the rail.")}, bar.width_in);
        form.length({"depth", phrase("Depth"), phrase("Square to the rail.")}, bar.depth_in);
    }
    form.pick(metal, bar.metal, row_choices(form.catalog().metals));
}

void shape_fields(Form& form, model::TwinBars& bars, const PostPlace& /*place*/) {
    form.length({"width", phrase("Width"), phrase("Of one bar, along the rail.")}, bars.width_in);
    form.length({"depth", phrase("Depth"), phrase("Of one bar, square to the rail.")}, bars.depth_in);
    form.length({"gap", phrase("Gap"), phrase("Clear, between the two bars.")}, bars.gap_in);
    form.word({"apart", phrase("Apart"), phrase("The way the gap lies.")}, bars.apart, plan_axes);
    form.pick(metal, bars.metal, row_choices(form.catalog().metals));
}

void shoe_fields(Form& form, model::Shoe& shoe) {
    form.at({"post/shoe", {model::PartKind::post}, phrase("Shoe")});
    form.word({"attachment", phrase("Attachment"), phrase("How the shoe is fixed to the plate.")}, shoe.attachment,
              attachments);
    form.length(outside_width, shoe.width_in);
    form.length(outside_depth, shoe.depth_in);
    form.length({"wall", phrase("Wall"), phrase("Thickness of the shoe's wall.")}, shoe.wall_in);
    form.length({"height", phrase("Height"), phrase("Above the underside of the plate.")}, shoe.height_in);
    form.pick(metal, shoe.metal, row_choices(form.catalog().metals));
    form.optional_quantity(
        {"allowable-moment", phrase("Allowable moment"),
         phrase("From the post through the shoe to the plate, from a report or a test. Empty: no evidence, and "
                "the check says so.")},
        shoe.allowable_moment_lb_in, units::Kind::moment);
    form.text({"moment-source", phrase("Source of the moment"),
               phrase("The report or test it is from. Empty: not specified.")},
              shoe.moment_source);
    const std::string now = shoe.form == model::ShoeForm::closed ? closed_shoe.value : "";
    form.optional_pick({"form", phrase("Form"),
                        phrase("A closed, welded shoe holds the post by bearing, without a report. Empty: not "
                               "specified.")},
                       now, {closed_shoe}, [&shoe](const std::string& chosen) {
                           shoe.form = chosen.empty() ? model::ShoeForm::not_stated : model::ShoeForm::closed;
                       });
}

void shape_fields(Form& form, model::WoodPost& post, const PostPlace& place) {
    post_size_field(form, post);
    form.length({"width", phrase("Width"), phrase("Actual, along the rail.")}, post.width_in);
    form.length({"depth", phrase("Depth"), phrase("Actual, square to the rail.")}, post.depth_in);
    wood_fields(form, post.species, post.grade, place.materials);
    if (!place.on_plate) return;
    form.yes_no({"notched", phrase("Notched"), phrase("Whether the post is cut away at the connection.")},
                post.notched);
    shoe_fields(form, post.shoe);
}

}  // namespace

void post_fields(Form& form, model::BaseDetail& detail) {
    const bool by_side = by_its_side(detail);
    form.at({"post", {model::PartKind::post}, phrase("Post")});
    const Named name{"shape", phrase("Shape"),
                     by_side ? phrase("A tube made rectangular begins half as deep again as it is wide; a round one as "
                                      "wide as before; a wood post as 3 1/2 in square.")
                             : phrase("A tube made rectangular begins half as deep again as it is wide; a round one "
                                      "as wide as before; a wood post as 3 1/2 in square in a 4 in shoe.")};
    const Shape shape = shape_of(detail.post);
    std::string now;
    std::vector<Choice> choices;
    for (const Word<Shape>& word : shapes) {
        if (word.value == shape) now = word.word;
        if (by_side && word.value == Shape::twin_bars) continue;
        choices.push_back({word.word, by_side && word.value == Shape::wood ? phrase("Wood post") : word.label});
    }
    form.kind(name, now, choices, [&detail, &catalog = form.catalog()](const std::string& chosen) {
        for (const Word<Shape>& word : shapes) {
            if (word.word == chosen) detail.post = in_shape(model::Post(detail.post), word.value, catalog);
        }
    });
    const PostPlace place{!by_side, detail.framing.materials};
    std::visit([&](auto& post) { shape_fields(form, post, place); }, detail.post);
}

}  // namespace toehold::editing
