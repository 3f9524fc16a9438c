// Which values that nobody told still stand in a detail: read off what its file would say.
#include "editing/job/job_form.h"
#include "job/paths.h"
#include "xml/detail/parts.h"
#include "xml/document/element.h"

#include <algorithm>
#include <stdexcept>

namespace toehold::editing {
namespace {

/// The element at the path; nullptr: there is none such.
const xml::Element* found(const xml::Element& root, const std::string& path) {
    try {
        return &job::element_at(root, job::steps_to(root, path));
    } catch (const std::logic_error&) {
        return nullptr;
    }
}

const std::string* attribute(const xml::Element& element, const std::string& name) {
    for (const auto& [key, value] : element.attributes) {
        if (key == name) return &value;
    }
    return nullptr;
}

/// The element's text without those attributes of it that are assumed by themselves.
std::string rest_of(const xml::Element& element, const std::string& path, const job::Started& started) {
    xml::Element rest = element;
    std::erase_if(rest.attributes, [&](const auto& one) {
        return std::any_of(started.assumed.begin(), started.assumed.end(), [&](const job::Assumed& other) {
            return other.element == path && other.attribute == one.first;
        });
    });
    return xml::element_text(rest, 0);
}

}  // namespace

std::vector<bool> still_assumed(const job::Started& started, const model::BaseDetail& now) {
    const xml::Element then_root = xml::detail_element(started.detail), now_root = xml::detail_element(now);
    std::vector<bool> still;
    still.reserve(started.assumed.size());
    for (const job::Assumed& assumed : started.assumed) {
        const xml::Element *before = found(then_root, assumed.element), *after = found(now_root, assumed.element);
        if (before == nullptr || after == nullptr) {
            still.push_back(false);
        } else if (assumed.attribute.empty()) {
            still.push_back(rest_of(*before, assumed.element, started) == rest_of(*after, assumed.element, started));
        } else {
            const std::string *was = attribute(*before, assumed.attribute), *is = attribute(*after, assumed.attribute);
            still.push_back(was != nullptr && is != nullptr && *was == *is);
        }
    }
    return still;
}

std::string field_of(const job::Assumed& assumed) {
    return assumed.attribute.empty() ? assumed.element : assumed.element + "/" + assumed.attribute;
}

}  // namespace toehold::editing
