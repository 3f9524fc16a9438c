#include "job/paths.h"

#include <algorithm>
#include <stdexcept>
#include <string>

namespace toehold::job {
namespace {

/// One step of a path: `block[B1]`.
struct Step {
    std::string_view name, key;
};

Step step_of(std::string_view text) {
    const std::size_t bracket = text.find('[');
    if (bracket == std::string_view::npos) return {text, {}};
    return {text.substr(0, bracket), text.substr(bracket + 1, text.size() - bracket - 2)};
}

bool has_key(const xml::Element& element, std::string_view key) {
    return std::any_of(element.attributes.begin(), element.attributes.end(), [key](const auto& attribute) {
        return (attribute.first == "id" || attribute.first == "at") && attribute.second == key;
    });
}

std::size_t child_of(const xml::Element& element, const Step& step) {
    for (std::size_t child = 0; child < element.children.size(); ++child) {
        const xml::Element& candidate = element.children[child];
        if (candidate.name == step.name && (step.key.empty() || has_key(candidate, step.key))) return child;
    }
    throw std::logic_error("no element " + std::string(step.name) + " in " + element.name);
}

}  // namespace

std::vector<std::size_t> steps_to(const xml::Element& root, std::string_view path) {
    std::vector<std::size_t> steps;
    const xml::Element* at = &root;
    while (!path.empty()) {
        const std::size_t slash = std::min(path.find('/'), path.size());
        steps.push_back(child_of(*at, step_of(path.substr(0, slash))));
        at = &at->children[steps.back()];
        path.remove_prefix(std::min(slash + 1, path.size()));
    }
    return steps;
}

const xml::Element& element_at(const xml::Element& root, const std::vector<std::size_t>& steps) {
    const xml::Element* at = &root;
    for (const std::size_t step : steps) at = &at->children.at(step);
    return *at;
}

xml::Element& element_at(xml::Element& root, const std::vector<std::size_t>& steps) {
    xml::Element* at = &root;
    for (const std::size_t step : steps) at = &at->children.at(step);
    return *at;
}

const std::string& attribute(const xml::Element& element, std::string_view name) {
    for (const auto& [key, value] : element.attributes) {
        if (key == name) return value;
    }
    throw std::logic_error("no attribute " + std::string(name) + " in " + element.name);
}

}  // namespace toehold::job
