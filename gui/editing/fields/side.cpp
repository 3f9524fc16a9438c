// A post on a member's side: what it is fastened to, where it ends, and what of the joint is described.
#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"
#include "model/member.h"

#include <algorithm>
#include <array>

namespace toehold::editing {
namespace {

const std::array<Word<model::MemberFace>, 2> member_faces{
    {{model::MemberFace::outside, "outside", phrase("Outside: the post stands outside the deck")},
     {model::MemberFace::inside, "inside", phrase("Inside: the post stands within the deck")}}};

/// Members that run along the rail.
std::vector<Choice> level_members(const model::Framing& framing) {
    std::vector<Choice> choices;
    for (const model::Member& member : model::members(framing)) {
        if (member.along == model::PlanAxis::x)
            choices.push_back({member.id, model::part_name(model::part_of(member))});
    }
    return choices;
}

model::BracketPlate start_bracket(const model::Post& post, const catalog::Catalog& catalog) {
    constexpr double beyond_post_in = 4.0;
    model::BracketPlate bracket;
    bracket.width_in = model::shaft(post).width_in + beyond_post_in;
    bracket.height_in = 8.0;
    bracket.from_top_in = 0.5;
    bracket.thickness_in = 0.375;
    bracket.metal = id_or_first(catalog.metals, "steel-a36");
    bracket.weld_leg_in = 0.1875;
    bracket.filler = id_or_first(catalog.fillers, "e70");
    return bracket;
}

/// A wood post is notched, a metal one has a bracket plate.
void post_presences(Form& form, model::BaseDetail& detail) {
    model::SideFastened& mount = on_side(detail);
    auto* const wood = std::get_if<model::WoodPost>(&detail.post);
    if (wood != nullptr || mount.notch) {
        const std::size_t before = form.entries().size();
        form.presence({"notch-given", phrase("Notched over the member"),
                       phrase("Whether the post is cut away so that it sits on the member; begins 1 1/2 in deep with "
                              "its shoulder on the member's top edge.")},
                      mount.notch, model::PostNotch{1.5, 0.0});
        form.after(before, [wood, &mount] {
            if (wood != nullptr) wood->notched = mount.notch.has_value();
        });
    }
    if (wood == nullptr || mount.bracket) {
        form.presence(
            {"bracket-given", phrase("Bracket plate"),
             phrase("Whether a plate welded to the post lies against the member; begins as 3/8 in plate, 8 in "
                    "high, 2 in beyond the post on either side.")},
            mount.bracket, start_bracket(detail.post, form.catalog()));
    }
}

void presences(Form& form, model::BaseDetail& detail) {
    model::SideFastened& mount = on_side(detail);
    post_presences(form, detail);
    form.presence({"stringer-given", phrase("Member is a stair's stringer"),
                   phrase("Begins at 37 degrees with 5 in of depth below the cuts; in the framing it stands as a level "
                          "member of its own depth.")},
                  mount.stringer, model::StringerSlope{37.0, 5.0, {}});
    form.presence({"decking-given", phrase("Decking over the framing"),
                   phrase("Begins as 1 in wood boards. No: the walking surface is the member's top edge.")},
                  mount.decking,
                  model::Decking{id_or_first(form.catalog().decking, "wood-southern-pine"), 1.0, {}, std::nullopt});
    form.yes_no({"boards-brace-member", phrase("Boards brace the member"),
                 phrase("Whether the boards' fasteners count against the member's moving at its top.")},
                mount.boards_brace_member);
}

void layer_count(Form& form, model::SideFastened& mount) {
    form.list(
        {"layer-count", phrase("Number of layers"),
         phrase("Siding, sheathing or spacers between member and post, from the member out. A new one is 1/4 in of "
                "hardwood; a smaller number takes the outermost.")},
        mount.layers.size(), {0, 20},
        [&mount, &catalog = form.catalog()] {
            mount.layers.push_back({id_or_first(catalog.decking, "shim-hardwood"), 0.25});
            return Phrase{};
        },
        [&mount] { mount.layers.pop_back(); });
}

}  // namespace

void side_fields(Form& form, model::BaseDetail& detail) {
    model::SideFastened& mount = on_side(detail);
    form.at({"side", {model::PartKind::post}, phrase("Post on the side")});
    form.pick({"member", phrase("Fastened to"),
               phrase("The rim, joist or block the post lies against. The framing moves in or out with it, so that it "
                      "touches the post.")},
              mount.member, level_members(detail.framing));
    form.word({"face", phrase("Face"), phrase("Of the member, as the deck sees it.")}, mount.face, member_faces);
    form.length({"post-bottom", phrase("Bottom of the post"), phrase("Below the member's top edge.")},
                mount.post_bottom_below_top_in);
    layer_count(form, mount);
    presences(form, detail);
}

}  // namespace toehold::editing
