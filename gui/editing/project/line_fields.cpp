// A guard line: its rail, how it is joined to the posts, and whether neighbors are counted on.
#include "editing/fields/choices.h"
#include "editing/project/groups.h"

namespace toehold::editing {
namespace {

const Named rail_described{"described", phrase("Rail described"),
                           phrase("Without a rail every post is reviewed alone. One begins as a continuous 2 in square "
                                  "tube without evidence of its connection.")};
const Named sharing{"sharing", phrase("Count on neighbors"),
                    phrase("Yes: a post is reviewed for the part of a push on the rail that reaches it, and the rail "
                           "and its connections must carry the rest. The code says nothing of sharing: the building "
                           "official must accept it. No: every post takes the whole push.")};

model::Rail start_rail(const catalog::Catalog& catalog) {
    model::Rail rail;
    rail.section = model::RectangularTube{2.0, 2.0, 0.125, id_or_first(catalog.metals, "steel-a500-b")};
    rail.run = model::RailRun::continuous;
    return rail;
}

void one_line(Form& form, model::Project& project, model::GuardLine& line) {
    const std::string path = "line[" + line.id + "]";
    form.at({path, {}, phrase("Guard line {}", line.id)});
    const std::size_t before = form.entries().size();
    form.presence(rail_described, line.rail, start_rail(form.catalog()));
    form.after(before, [&line] {
        if (!line.rail) line.sharing = false;
    });
    if (!line.rail) return;
    form.yes_no(sharing, line.sharing);
    rail_fields(form, *line.rail, path + "/rail", project, line.id);
}

}  // namespace

void line_fields(Form& form, model::Project& project) {
    for (model::GuardLine& line : project.guard_lines) one_line(form, project, line);
}

}  // namespace toehold::editing
