#include "xml/basis_change.h"

#include "xml/basis_form.h"
#include "xml/strict_document.h"

#include <tinyxml2.h>

#include <set>

namespace toehold::xml {
namespace {

/// Anything else would not stand as a name in the element the reader is given.
bool may_be_a_name(const std::string& text) {
    return !text.empty() && text.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == std::string::npos &&
           text.front() != '-';
}

void set(Element& element, const BasisSetting& setting) {
    std::erase_if(element.attributes, [&](const auto& attribute) { return attribute.first == setting.attribute; });
    element.optional_text(setting.attribute, setting.value);
}

model::Problem problem(const BasisSetting& setting, const std::string& message) {
    return {{}, 0, "basis", setting.attribute, {}, message};
}

model::Problems apply(Element& element, const std::vector<BasisSetting>& settings) {
    model::Problems problems;
    std::set<std::string> seen;
    for (const BasisSetting& setting : settings) {
        if (!may_be_a_name(setting.attribute)) {
            problems.push_back(problem(setting, "<basis> has no attribute of this name"));
        } else if (!seen.insert(setting.attribute).second) {
            problems.push_back(problem(setting, "this attribute is set twice"));
        } else {
            set(element, setting);
        }
    }
    return problems;
}

}  // namespace

BasisRead change_basis(const model::Basis& basis, const std::vector<BasisSetting>& settings) {
    Element element = basis_element(basis);
    BasisRead result;
    result.problems = apply(element, settings);
    if (!result.problems.empty()) return result;
    const StrictDocument document = parse_strictly(document_text(element));
    Reading reading{document.problems, {}};
    if (document.root != nullptr) {
        ElementReader reader(*document.root, "basis", reading);
        result.basis = read_basis(reader);
    }
    result.problems = std::move(reading.problems);
    // The line is that of a text nobody wrote.
    for (model::Problem& one : result.problems) one.line = 0;
    if (!result.problems.empty()) result.basis.reset();
    return result;
}

}  // namespace toehold::xml
