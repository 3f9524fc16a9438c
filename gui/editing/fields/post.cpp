// The guard and its post, with the weld at its foot.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"
#include "editing/fields/plan_axes.h"

#include <algorithm>
#include <array>
#include <type_traits>

namespace toehold::editing {
namespace {

const std::array<Word<model::Occupancy>, 3> occupancies{
    {{model::Occupancy::one_and_two_family, "one-and-two-family", phrase("One- or two-family dwelling")},
     {model::Occupancy::limited, "limited", phrase("Group I-3, F, H or S, not open to the public, under 50 people")},
     {model::Occupancy::other, "other", phrase("Any other")}}};

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

template <class Tube>
void tube_parts(Form& form, Tube& tube, const model::Stub& start) {
    form.presence(
        {"certified", phrase("Strengths by certificate"), phrase("For metals whose standard guarantees none.")},
        tube.certificate, model::Certificate{32000.0, 48000.0, "certificate not yet named"});
    form.presence({"on-stub", phrase("On a stub"), phrase("Whether the post slides over a stub welded to the plate.")},
                  tube.stub, start);
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

void shape_fields(Form& form, model::RectangularTube& tube) {
    if (tube.width_in == tube.depth_in) {
        both_widths(form, tube);
    } else {
        form.length(outside_width, tube.width_in);
        form.length(outside_depth, tube.depth_in);
    }
    form.length(wall, tube.wall_in);
    form.pick(metal, tube.metal, row_choices(form.catalog().metals));
    tube_parts(form, tube,
               start_stub(tube.width_in - 2.0 * tube.wall_in, tube.depth_in - 2.0 * tube.wall_in, form.catalog()));
    if (tube.stub) stub_fields(form, *tube.stub, false);
}

void shape_fields(Form& form, model::RoundTube& tube) {
    form.length({"diameter", phrase("Diameter"), phrase("Outside.")}, tube.diameter_in);
    form.length(wall, tube.wall_in);
    form.pick(metal, tube.metal, row_choices(form.catalog().metals));
    const double inside_in = tube.diameter_in - 2.0 * tube.wall_in;
    tube_parts(form, tube, start_stub(inside_in, inside_in, form.catalog()));
    if (tube.stub) stub_fields(form, *tube.stub, true);
}

void shape_fields(Form& form, model::SolidBar& bar) {
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

void shape_fields(Form& form, model::TwinBars& bars) {
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

void shape_fields(Form& form, model::WoodPost& post, const std::vector<model::OwnWood>& materials) {
    post_size_field(form, post);
    form.length({"width", phrase("Width"), phrase("Actual, along the rail.")}, post.width_in);
    form.length({"depth", phrase("Depth"), phrase("Actual, square to the rail.")}, post.depth_in);
    wood_fields(form, post.species, post.grade, materials);
    form.yes_no({"notched", phrase("Notched"), phrase("Whether the post is cut away at the connection.")},
                post.notched);
    shoe_fields(form, post.shoe);
}

}  // namespace

void guard_fields(Form& form, model::BaseDetail& detail) {
    model::Guard& guard = detail.guard;
    form.at({"guard", {model::PartKind::guard}, phrase("Guard")});
    form.length({"height", phrase("Height"), phrase("Top of the guard above the walking surface.")}, guard.height_in);
    form.zero_if_empty({"plate-below-surface", phrase("Plate below the surface"),
                        phrase("Underside of the plate below the walking surface. Empty: 0, the plate stands on "
                               "the decking.")},
                       on_deck(detail).plate_below_surface_in, units::Kind::length, Range::not_negative);
    form.word({"occupancy", phrase("Occupancy"),
               phrase("Decides which pushes the code asks for. Where it is not known, any other is the safer.")},
              guard.occupancy, occupancies);
    form.optional_quantity(
        {"tributary-length", phrase("Tributary length"),
         phrase("Length of top rail this post takes: the spacing of the posts. The code's load along "
                "the rail needs it.")},
        guard.tributary_length_in, units::Kind::length);
    form.optional_yes_no({"handrail", phrase("Top is a handrail"),
                          phrase("Whether the top of the guard serves as a handrail. Empty: it does.")},
                         guard.handrail);
}

void post_fields(Form& form, model::BaseDetail& detail) {
    form.at({"post", {model::PartKind::post}, phrase("Post")});
    static const Named name{"shape", phrase("Shape"),
                            phrase("A tube made rectangular begins half as deep again as it is wide; a round one "
                                   "as wide as before; a wood post as 3 1/2 in square in a 4 in shoe.")};
    const Shape shape = shape_of(detail.post);
    std::string now;
    std::vector<Choice> choices;
    for (const Word<Shape>& word : shapes) {
        if (word.value == shape) now = word.word;
        choices.push_back({word.word, word.label});
    }
    form.kind(name, now, choices, [&detail, &catalog = form.catalog()](const std::string& chosen) {
        for (const Word<Shape>& word : shapes) {
            if (word.word == chosen) detail.post = in_shape(model::Post(detail.post), word.value, catalog);
        }
    });
    std::visit(
        [&](auto& post) {
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(post)>, model::WoodPost>) {
                shape_fields(form, post, detail.framing.materials);
            } else {
                shape_fields(form, post);
            }
        },
        detail.post);
}

}  // namespace toehold::editing
