#include "editing/fields/choices.h"
#include "editing/fields/groups.h"
#include "editing/fields/pieces.h"
#include "editing/fields/plan_axes.h"
#include "editing/parts/members.h"
#include "model/member.h"

#include <fmt/format.h>

#include <array>

namespace toehold::editing {
namespace {

/// The two joists next to the post, one on each side; nullptr where there is none.
struct Neighbours {
    const model::Joist* below = nullptr;
    const model::Joist* above = nullptr;
};

Neighbours next_to_post(const model::Joists& joists) {
    Neighbours next;
    for (const model::Joist& joist : joists.members) {
        if (joist.offset_in <= 0.0 && (next.below == nullptr || joist.offset_in > next.below->offset_in)) {
            next.below = &joist;
        }
        if (joist.offset_in > 0.0 && (next.above == nullptr || joist.offset_in < next.above->offset_in)) {
            next.above = &joist;
        }
    }
    return next;
}

/// A 4x8 under the post, from joist to joist where there is one on either side.
model::Block first_block(const model::Framing& framing, const catalog::Catalog& catalog) {
    const Timber timber = start_timber(framing, catalog);
    model::Block block;
    block.from_in = -7.25;
    block.to_in = 7.25;
    block.width_in = 3.5;
    block.depth_in = 7.25;
    block.species = timber.species;
    block.grade = timber.grade;
    if (!framing.joists) return block;
    block.along = framing.joists->along == model::PlanAxis::y ? model::PlanAxis::x : model::PlanAxis::y;
    const Neighbours next = next_to_post(*framing.joists);
    if (next.below == nullptr || next.above == nullptr) return block;
    block.from_in = next.below->offset_in + 0.5 * next.below->plies * framing.joists->width_in;
    block.to_in = next.above->offset_in - 0.5 * next.above->plies * framing.joists->width_in;
    block.from_end.joist = next.below->id;
    block.to_end.joist = next.above->id;
    return block;
}

void add_block_beside(model::Framing& framing, const catalog::Catalog& catalog) {
    model::Block block = framing.blocks.empty() ? first_block(framing, catalog) : framing.blocks.back();
    if (!framing.blocks.empty()) block.across_in += block.plies * block.width_in;
    block.id = free_member_id(framing, "B");
    framing.blocks.push_back(std::move(block));
}

void end_fields(Form& form, model::Framing& framing, model::Block& block, bool upper) {
    model::BlockEnd& end = upper ? block.to_end : block.from_end;
    form.at({fmt::format("framing/block[{}]/end[{}]", block.id, upper ? "to" : "from"),
             {model::PartKind::block, block.id},
             upper ? phrase("Block {}, upper end", block.id) : phrase("Block {}, lower end", block.id)});
    std::vector<Choice> members;
    for (const model::Member& member : model::members(framing)) {
        if (member.id != block.id) members.push_back({member.id, model::part_name(model::part_of(member))});
    }
    form.pick_or_none({"joist", phrase("Held by"),
                       phrase("The joist, rim or block across it that the end meets. Empty: none described.")},
                      end.joist, members);
    connection_fields(form, end.connection, block.depth_in * block.stack);
}

void one_block(Form& form, model::Framing& framing, model::Block& block) {
    form.at(
        {fmt::format("framing/block[{}]", block.id), {model::PartKind::block, block.id}, phrase("Block {}", block.id)});
    member_id(form, framing, block.id);
    form.word({"along", phrase("Run"), phrase("The way its length, and its grain, runs in plan.")}, block.along,
              plan_axes);
    form.place({"from", phrase("Lower end"), phrase("Along itself.")}, block.from_in);
    form.place({"to", phrase("Upper end"), phrase("Along itself.")}, block.to_in);
    form.place({"across", phrase("Place"), phrase("Of its center line, across itself.")}, block.across_in);
    piece_fields(form, piece_of(block, framing));
    form.count({"plies", phrase("Pieces"), phrase("Side by side and nailed together; solid infill has many.")},
               block.plies, {1, model::most_block_plies});
    form.count({"stack", phrase("Stacked"), phrase("Pieces one on another, 1 to 4.")}, block.stack, {1, 4});
    if (block.stack > 1) {
        form.yes_no({"stack-fastened", phrase("Stack fastened"),
                     phrase("Whether the pieces of the stack are screwed or nailed to each other.")},
                    block.stack_fastened);
    }
    end_fields(form, framing, block, false);
    end_fields(form, framing, block, true);
}

}  // namespace

void block_count(Form& form, model::Framing& framing) {
    form.list(
        {"block-count", phrase("Number of blocks"),
         phrase("The first begins as a 4x8 under the post from joist to joist, with nothing described at its "
                "ends; a new one is like the last and lies beside it; a smaller number takes the last.")},
        framing.blocks.size(), {0, 50},
        [&framing, &catalog = form.catalog()] {
            add_block_beside(framing, catalog);
            return Phrase{};
        },
        [&framing] {
            follow_id(framing, framing.blocks.back().id, {});
            framing.blocks.pop_back();
        });
}

void block_fields(Form& form, model::Framing& framing) {
    for (model::Block& block : framing.blocks) one_block(form, framing, block);
}

}  // namespace toehold::editing
