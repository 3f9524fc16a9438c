#include "job/assumptions.h"

#include "job/paths.h"
#include "xml/detail/parts.h"

#include <algorithm>
#include <utility>

namespace toehold::job {

void Assumptions::attribute(std::string element, std::string name, format::Phrase why) {
    all_.push_back({std::move(element), std::move(name), {}, std::move(why)});
}

void Assumptions::element(std::string element, format::Phrase value, format::Phrase why) {
    all_.push_back({std::move(element), {}, std::move(value), std::move(why)});
}

std::vector<Assumed> Assumptions::of(const model::BaseDetail& detail) const {
    const xml::Element root = xml::detail_element(detail);
    std::vector<std::pair<std::vector<std::size_t>, Assumed>> placed;
    for (Assumed assumed : all_) {
        std::vector<std::size_t> steps = steps_to(root, assumed.element);
        if (!assumed.attribute.empty())
            assumed.value = format::verbatim(job::attribute(element_at(root, steps), assumed.attribute));
        placed.emplace_back(std::move(steps), std::move(assumed));
    }
    std::stable_sort(placed.begin(), placed.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Assumed> result;
    result.reserve(placed.size());
    for (auto& [steps, assumed] : placed) result.push_back(std::move(assumed));
    return result;
}

}  // namespace toehold::job
