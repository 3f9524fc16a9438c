#include "paper/site/instructions.h"

#include <iterator>
#include <utility>

namespace toehold::paper::site {

AllInstructions all_instructions(const Reader& reader) {
    AllInstructions all{block_instructions(reader), look_for(reader), do_not(reader)};
    for (Instructions more :
         {block_end_instructions(reader), anchor_instructions(reader), surrounding_instructions(reader)})
        std::move(more.begin(), more.end(), std::back_inserter(all.in));
    return all;
}

}  // namespace toehold::paper::site
