#include "search/space/space.h"

#include "xml/detail/detail_file.h"
#include "xml/document/file.h"

#include <limits>
#include <stdexcept>

namespace toehold::search {
namespace {

/// A text in a list of texts, so that no two lists give the same letters.
void add(std::string& all, const std::string& text) { all += std::to_string(text.size()) + ":" + text + "\n"; }

void add(std::string& all, const Option& option, const model::BaseDetail& base) {
    add(all, option.label);
    model::BaseDetail detail = base;
    add(all, option.apply(detail) ? xml::write_detail(detail) : std::string());
}

}  // namespace

Candidate size(const Space& space) {
    Candidate count = 1;
    for (const Axis& axis : space.axes) {
        const Candidate options = axis.options.size();
        if (options != 0 && count > std::numeric_limits<Candidate>::max() / options)
            throw std::overflow_error("a space of more candidates than can be numbered");
        count *= options;
    }
    return count;
}

std::vector<std::size_t> choices(const Space& space, Candidate candidate) {
    if (candidate >= size(space)) throw std::out_of_range("no candidate " + std::to_string(candidate));
    std::vector<std::size_t> chosen(space.axes.size(), 0);
    for (std::size_t axis = space.axes.size(); axis-- > 0;) {
        const Candidate options = space.axes[axis].options.size();
        chosen[axis] = static_cast<std::size_t>(candidate % options);
        candidate /= options;
    }
    return chosen;
}

Candidate number_of(const Space& space, const std::vector<std::size_t>& choices) {
    if (choices.size() != space.axes.size()) throw std::out_of_range("not one choice for each axis");
    Candidate number = 0;
    for (std::size_t axis = 0; axis < space.axes.size(); ++axis) {
        const std::size_t options = space.axes[axis].options.size();
        if (choices[axis] >= options) throw std::out_of_range("no such choice along " + space.axes[axis].id);
        number = number * options + choices[axis];
    }
    return number;
}

std::optional<model::BaseDetail> detail_of(const Space& space, Candidate candidate) {
    const std::vector<std::size_t> chosen = choices(space, candidate);
    model::BaseDetail detail = space.base.detail;
    for (std::size_t axis = 0; axis < space.axes.size(); ++axis) {
        if (!space.axes[axis].options[chosen[axis]].apply(detail)) return std::nullopt;
    }
    return detail;
}

std::string fingerprint(const Space& space) {
    std::string all;
    add(all, xml::write_detail(space.base.detail));
    for (const Axis& axis : space.axes) {
        add(all, axis.id);
        add(all, std::to_string(axis.options.size()));
        for (const Option& option : axis.options) add(all, option, space.base.detail);
    }
    return xml::sha256(all);
}

}  // namespace toehold::search
