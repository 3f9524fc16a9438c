#include "editing/fields/groups.h"
#include "editing/words.h"

#include <fmt/format.h>

#include <array>

namespace toehold::editing {
namespace {

constexpr double inches_per_foot = 12.0;

constexpr std::array<Word<model::Directions>, 2> directions{
    {{model::Directions::all_round, "all-round", TOEHOLD_MARK("From every direction")},
     {model::Directions::outward, "outward", TOEHOLD_MARK("Outward only")}}};

const Named down{"down", TOEHOLD_MARK("Downward at once"),
                 TOEHOLD_MARK("Force down on the guard at the same time; negative is up. Empty: none.")};

/// Along a rail the trade speaks of pounds a foot, or kilonewtons a metre; nobody of pounds an inch.
std::string shown_along_rail(double push_lb_per_ft, units::System system) {
    if (system == units::System::us) return fmt::format("{:.6g} plf", push_lb_per_ft);
    std::string text = shown(push_lb_per_ft / inches_per_foot, units::Kind::force_per_length, system);
    return text.replace(text.find(' '), std::string::npos, " kN/m");
}

std::optional<double> typed_along_rail(const std::string& text, units::System system) {
    if (const std::optional<double> bare = units::parse_number(text); bare && system == units::System::us) return bare;
    const std::optional<double> lb_per_in = typed(text, units::Kind::force_per_length, system);
    if (!lb_per_in) return std::nullopt;
    return *lb_per_in * inches_per_foot;
}

void push_along_rail(Form& form, double& push_lb_per_ft) {
    Field field = form.fresh(
        {"push", TOEHOLD_MARK("Push along the rail"), TOEHOLD_MARK("Horizontal force on each length of the top rail.")},
        FieldKind::quantity);
    field.quantity = units::Kind::force_per_length;
    field.value = shown_along_rail(push_lb_per_ft, form.system());
    form.add(std::move(field), [&push_lb_per_ft, system = form.system()](const std::string& text) -> Outcome {
        const std::optional<double> read = typed_along_rail(text, system);
        const char* const alone = system == units::System::us ? "plf" : "kN/m";
        if (!read) {
            return {fmt::format("Push along the rail takes {}; a number alone counts as {}.",
                                units::accepted(units::Kind::force_per_length), alone)};
        }
        if (!(*read > 0.0)) return {"Push along the rail must be more than zero."};
        push_lb_per_ft = *read;
        return {};
    });
}

void rail_taken(Form& form, double& spacing_ft) {
    Field field = form.fresh({"spacing", TOEHOLD_MARK("Rail taken by the post"),
                              TOEHOLD_MARK("Length of rail whose push this post takes: the spacing of posts.")},
                             FieldKind::quantity);
    field.value = shown(spacing_ft * inches_per_foot, units::Kind::length, form.system());
    form.add(std::move(field), [&spacing_ft, system = form.system()](const std::string& text) -> Outcome {
        const Reading<double> read =
            read_quantity("Rail taken by the post", text, units::Kind::length, system, Range::positive);
        if (!read.value) return {read.refusal};
        spacing_ft = *read.value / inches_per_foot;
        return {};
    });
}

void concentrated_fields(Form& form, model::ConcentratedLoad& load) {
    form.at({"loads/concentrated", "push", TOEHOLD_MARK("Concentrated push")});
    form.quantity({"push", TOEHOLD_MARK("Push"), TOEHOLD_MARK("Horizontal force at the top of the guard.")},
                  load.push_lb, units::Kind::force);
    form.zero_if_empty(down, load.down_lb, units::Kind::force, Range::any);
}

void line_fields(Form& form, model::LineLoad& load) {
    form.at({"loads/line", "push", TOEHOLD_MARK("Push along the rail")});
    push_along_rail(form, load.push_lb_per_ft);
    rail_taken(form, load.spacing_ft);
    form.zero_if_empty(down, load.down_lb, units::Kind::force, Range::any);
}

void user_fields(Form& form, model::UserLoad& load, std::size_t number) {
    form.at({fmt::format("loads/user[{}]", number), "push", fmt::format("Load {}", number)});
    form.required_text({"name", TOEHOLD_MARK("Name"), TOEHOLD_MARK("What the load is called in the results.")},
                       load.name);
    form.quantity({"push", TOEHOLD_MARK("Push"), TOEHOLD_MARK("Horizontal force; 0 where there is none.")},
                  load.push_lb, units::Kind::force, Range::not_negative);
    form.zero_if_empty(down, load.down_lb, units::Kind::force, Range::any);
    form.optional_quantity({"height", TOEHOLD_MARK("Height"),
                            TOEHOLD_MARK("Of the push above the walking surface. Empty: the top of the guard.")},
                           load.height_in, units::Kind::length);
    form.text({"source", TOEHOLD_MARK("Source"), TOEHOLD_MARK("Where the load comes from. Empty: stated by the user.")},
              load.source);
}

/// A load is named by the detail where any is described; else the code's is assumed, and said to be.
void mark_stated(model::Loads& loads) { loads.stated = loads.concentrated || loads.line || !loads.user.empty(); }

template <class Load>
void load_presence(Form& form, const Named& name, model::Loads& loads, std::optional<Load>& load, const Load& start) {
    const std::size_t before = form.entries().size();
    form.presence(name, load, start);
    form.after(before, [&loads] { mark_stated(loads); });
}

}  // namespace

void load_fields(Form& form, model::Loads& loads) {
    form.at({"loads", "push", TOEHOLD_MARK("Loads")});
    form.word({"directions", TOEHOLD_MARK("Directions"), TOEHOLD_MARK("From where the pushes come.")}, loads.directions,
              directions);
    load_presence(form,
                  {"concentrated", TOEHOLD_MARK("Concentrated push"),
                   TOEHOLD_MARK("Whether one is stated; begins as 200 lb. With no load stated at all, 200 lb at the "
                                "top of the guard is assumed.")},
                  loads, loads.concentrated, model::ConcentratedLoad{});
    load_presence(form,
                  {"line", TOEHOLD_MARK("Push along the rail"),
                   TOEHOLD_MARK("Whether one is stated; begins as 50 plf over 6 ft of rail.")},
                  loads, loads.line, model::LineLoad{50.0, 6.0, 0.0});
    const std::size_t before = form.entries().size();
    form.list(
        {"user-count", TOEHOLD_MARK("Number of other loads"),
         TOEHOLD_MARK("Each further load, by its name. One begins with 200 lb; a smaller number takes the last.")},
        loads.user.size(), {0, 20},
        [&loads] {
            loads.user.push_back(
                {fmt::format("Load {}", loads.user.size() + 1), 200.0, 0.0, std::nullopt, std::string()});
            return std::string();
        },
        [&loads] { loads.user.pop_back(); });
    form.after(before, [&loads] { mark_stated(loads); });
    if (loads.concentrated) concentrated_fields(form, *loads.concentrated);
    if (loads.line) line_fields(form, *loads.line);
    for (std::size_t index = 0; index < loads.user.size(); ++index) user_fields(form, loads.user[index], index + 1);
}

}  // namespace toehold::editing
