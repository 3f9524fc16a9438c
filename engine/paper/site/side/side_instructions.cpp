#include "paper/site/side/side_instructions.h"

#include "drawing/annotation/labels.h"
#include "format/figures.h"
#include "model/side_geometry.h"
#include "paper/shop/shop_notes.h"
#include "paper/site/wording.h"
#include "paper/words.h"

#include <algorithm>
#include <cmath>

namespace toehold::paper::site {
namespace {

using format::Phrase;
using format::phrase;

constexpr double no_tape_tells_in = 1.0 / 64.0;

const model::SideFastened& mount_of(const Reader& reader) { return on_side(reader.resolved.detail); }

Phrase member_name(const Reader& reader, const std::string& id) {
    const auto number = model::find_member(reader.resolved.detail.framing, id);
    if (!number) return format::verbatim(id);
    return model::part_name(model::part_of(model::member(reader.resolved.detail.framing, *number)));
}

/// Against the member's top edge.
Phrase height_words(double below_top_in, units::System system) {
    if (std::abs(below_top_in) < no_tape_tells_in) return phrase("level with the top of the member");
    return below_top_in < 0.0 ? phrase("{} above the top of the member", tape_words(-below_top_in, system))
                              : phrase("{} below the top of the member", tape_words(below_top_in, system));
}

/// Lumber by its nominal size, metal as the shop names it.
Phrase post_name(const Reader& reader) {
    const auto* const wood = std::get_if<model::WoodPost>(&reader.resolved.detail.post);
    if (wood == nullptr) return shop::post_words(reader.resolved, reader.system);
    const auto [thin, wide] = std::minmax(wood->width_in, wood->depth_in);
    const std::string nominal = nominal_size(thin, wide);
    const std::string size =
        nominal.empty() ? tape_figure(wood->width_in, reader.system) + " x " + tape_words(wood->depth_in, reader.system)
                        : nominal;
    if (!reader.resolved.post_species || !reader.resolved.post_grade) return phrase("wood {}", size);
    return phrase("{}, {} {}", size, reader.resolved.post_species->name, reader.resolved.post_grade->name);
}

Instruction post_instruction(const Reader& reader) {
    const model::SideFastened& mount = mount_of(reader);
    const Phrase member = member_name(reader, mount.member);
    Phrase words = phrase("Its lower end {}.", height_words(mount.post_bottom_below_top_in, reader.system));
    if (mount.bracket)
        words = phrase("{} Upper edge of the bracket plate {}.", std::move(words),
                       height_words(mount.bracket->from_top_in, reader.system));
    if (mount.notch)
        words = phrase("{} Notch {} deep, its shoulder {}.", std::move(words),
                       tape_words(mount.notch->depth_in, reader.system),
                       height_words(mount.notch->below_top_in, reader.system));
    if (mount.stringer)
        words =
            phrase("{} Heights are plumb, from the stringer's upper edge at the center of the post.", std::move(words));
    return {mount.face == model::MemberFace::outside ? phrase("Post: {}, outside {}.", post_name(reader), member)
                                                     : phrase("Post: {}, inside {}.", post_name(reader), member),
            std::move(words)};
}

/// From the member to the post.
void add_layers(Instructions& list, const Reader& reader) {
    const model::SideFastened& mount = mount_of(reader);
    const auto& materials = on_side(reader.resolved).layers;
    format::Listed all;
    for (std::size_t index = 0; index < mount.layers.size(); ++index) {
        const std::string& name = index < materials.size() ? materials[index].name : mount.layers[index].material;
        all.items.push_back(phrase("{}, {}", name, tape_words(mount.layers[index].thickness_in, reader.system)));
    }
    if (all.items.empty()) return;
    list.push_back({phrase("Between {} and post:", member_name(reader, mount.member)),
                    phrase("{}. Solid where the post bears, nothing more.", std::move(all))});
}

/// Whether x is to the right of one who stands before the post.
bool faces_right(const Reader& reader, double x_in) {
    return (x_in > 0.0) == (mount_of(reader).face == model::MemberFace::inside);
}

/// To the left or right of the center line as one sees it who stands before the post.
Phrase aside_words(const Reader& reader, double x_in) {
    if (std::abs(x_in) < no_tape_tells_in) return phrase("on the center line");
    const bool right = faces_right(reader, x_in);
    const std::string figure = tape_words(std::abs(x_in), reader.system);
    return right ? phrase("{} right of the center line", figure) : phrase("{} left of the center line", figure);
}

Instruction holes_instruction(const Reader& reader) {
    const model::SideFastened& mount = mount_of(reader);
    std::vector<model::SidePlace> places = mount.places;
    std::stable_sort(places.begin(), places.end(),
                     [](const auto& one, const auto& other) { return one.below_top_in < other.below_top_in; });
    format::Listed all;
    for (const model::SidePlace& place : places)
        all.items.push_back(phrase("{} {} down, {}", place.id, tape_words(place.below_top_in, reader.system),
                                   aside_words(reader, place.x_in)));
    return {phrase("Heights of the holes, from the top of {} down:", member_name(reader, mount.member)),
            phrase("{} (of the post; left and right as you face it).", std::move(all))};
}

/// Ties of one name, report and value.
struct TiesAlike {
    std::vector<const model::TensionTie*> ties;
};

std::vector<TiesAlike> ties_alike(const std::vector<model::TensionTie>& ties) {
    std::vector<TiesAlike> all;
    for (const model::TensionTie& tie : ties) {
        auto alike = std::find_if(all.begin(), all.end(), [&](const TiesAlike& set) {
            const model::TensionTie& one = *set.ties.front();
            return one.name == tie.name && one.report == tie.report && one.tension_lb == tie.tension_lb &&
                   one.chosen == tie.chosen;
        });
        if (alike == all.end()) alike = all.insert(all.end(), TiesAlike{});
        alike->ties.push_back(&tie);
    }
    return all;
}

/// `T1 2 in down, 1 1/2 in left, to joist J2`
Phrase tie_place(const Reader& reader, const model::TensionTie& tie) {
    const Phrase into = member_name(reader, tie.into);
    if (!tie.bolt.empty()) return phrase("{} on bolt {}, to {}", tie.id, tie.bolt, into);
    const std::string far = tape_words(std::abs(tie.below_top_in), reader.system);
    const Phrase height = tie.below_top_in < 0.0 ? phrase("{} up", far) : phrase("{} down", far);
    if (std::abs(tie.x_in) < no_tape_tells_in) return phrase("{} {}, to {}", tie.id, height, into);
    const std::string aside = tape_words(std::abs(tie.x_in), reader.system);
    return faces_right(reader, tie.x_in) ? phrase("{} {}, {} right, to {}", tie.id, height, aside, into)
                                         : phrase("{} {}, {} left, to {}", tie.id, height, aside, into);
}

}  // namespace

Instructions joint_instructions(const Reader& reader) {
    Instructions list{post_instruction(reader)};
    add_layers(list, reader);
    if (!mount_of(reader).places.empty()) list.push_back(holes_instruction(reader));
    return list;
}

Instructions tie_instructions(const Reader& reader) {
    Instructions list;
    for (const TiesAlike& set : ties_alike(mount_of(reader).ties)) {
        const model::TensionTie& first = *set.ties.front();
        std::vector<std::string> ids;
        format::Listed places;
        for (const model::TensionTie* const tie : set.ties) {
            ids.push_back(tie->id);
            places.items.push_back(tie_place(reader, *tie));
        }
        const std::string pull = format::figure_text(first.tension_lb, "lb", reader.system);
        const Phrase lead = ids.size() == 1 ? phrase("Tie {}: {}", ids.front(), first.name)
                                            : phrase("Ties {}: {}", listed(ids), first.name);
        if (!first.chosen) {
            list.push_back({phrase("{}: NOT CHOSEN YET.", lead),
                            phrase("{}. Ask. The report must give at least {} in tension.", std::move(places), pull)});
            continue;
        }
        list.push_back(
            {phrase("{}.", lead),
             phrase("From the top of the member and the center line, as you face the post: {}. Fasteners and fit as "
                    "the report says ({}). Required allowable tension: {} each.",
                    std::move(places), first.report, pull)});
    }
    return list;
}

// `*`: customary practice.
Instructions look_at_joint(const Reader& reader) {
    const model::SideFastened& mount = mount_of(reader);
    Instructions list{{{},
                       mount.layers.empty()
                           ? phrase("Post tight on {}, top to bottom.*", mount.member)
                           : phrase("Post tight on the layers, and they on {}, top to bottom.*", mount.member)}};
    if (!mount.ties.empty()) list.push_back({{}, phrase("Ties straight, every hole filled, no slack.*")});
    if (mount.stringer)
        list.push_back({{},
                        mount.stringer->braced_by.empty()
                            ? phrase("What keeps the stringer from moving sideways at the post: not specified, ASK.")
                            : phrase("Stringer braced sideways: {}.", mount.stringer->braced_by)});
    if (!mount.notch) list.push_back({{}, phrase("No cut in the post but the holes.*")});
    return list;
}

Instructions do_not_at_joint(const Reader& reader) {
    const model::SideFastened& mount = mount_of(reader);
    const bool wood = std::holds_alternative<model::WoodPost>(reader.resolved.detail.post);
    Instructions list;
    if (!mount.notch && wood) list.push_back({{}, phrase("notch the post: no notch is drawn.")});
    list.push_back({{},
                    mount.layers.empty() ? phrase("pack out the post: nothing is drawn behind it.*")
                                         : phrase("add packing that is not drawn.*")});
    list.push_back({{}, phrase("move a hole up or down: the heights were calculated with.")});
    return list;
}

}  // namespace toehold::paper::site
