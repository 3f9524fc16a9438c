#include "paper/site/instructions.h"

#include "paper/site/side/side_instructions.h"

#include <iterator>
#include <utility>

namespace toehold::paper::site {

AllInstructions all_instructions(const Reader& reader) {
    AllInstructions all{block_instructions(reader), look_for(reader), do_not(reader)};
    const auto add = [&all](Instructions more) { std::move(more.begin(), more.end(), std::back_inserter(all.in)); };
    const bool on_a_side = kind(reader.resolved.detail.mount) == model::MountKind::side_fastened;
    add(block_end_instructions(reader));
    if (on_a_side) add(joint_instructions(reader));
    add(anchor_instructions(reader));
    if (on_a_side) add(tie_instructions(reader));
    add(surrounding_instructions(reader));
    return all;
}

}  // namespace toehold::paper::site
