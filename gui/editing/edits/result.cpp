#include "editing/edits/result.h"

namespace toehold::editing {

std::string step_name(const std::string& verb, const std::vector<std::string>& holes,
                      const std::vector<std::string>& other_parts) {
    const std::size_t count = holes.size() + other_parts.size();
    if (count == 1) return verb + " " + (holes.empty() ? other_parts.front() : "hole " + holes.front());
    return verb + " " + std::to_string(count) + (other_parts.empty() ? " holes" : " parts");
}

}  // namespace toehold::editing
