#include "xml/detail/differences.h"

#include "xml/detail/parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

namespace toehold::xml {
namespace {

using Elements = std::vector<Element>;
/// Of each child of the first, its partner among the second's.
using Partners = std::vector<std::optional<std::size_t>>;

const std::string* find_attribute(const Element& element, std::string_view name) {
    for (const auto& [key, value] : element.attributes) {
        if (key == name) return &value;
    }
    return nullptr;
}

std::string attribute(const Element& element, std::string_view name) {
    const std::string* const value = find_attribute(element, name);
    return value == nullptr ? std::string() : *value;
}

/// The attribute that tells an element from others of its name.
std::string_view key_name(const Element& element) {
    struct Keyed {
        std::string_view element, key;
    };
    constexpr std::array<Keyed, 11> keyed{{{"hole", "id"},
                                           {"slot", "id"},
                                           {"place", "id"},
                                           {"tie", "id"},
                                           {"joist", "id"},
                                           {"rim", "id"},
                                           {"support", "id"},
                                           {"block", "id"},
                                           {"end", "at"},
                                           {"user", "name"},
                                           {"anchors", "holes"}}};
    for (const Keyed& one : keyed) {
        if (one.element == element.name) return one.key;
    }
    return {};
}

std::string key_of(const Element& element) { return attribute(element, key_name(element)); }

/// Nothing else refers to its key, so that another key does not make it another thing.
bool may_change_key(const Element& element) { return element.name == "anchors" || element.name == "user"; }

template <class Match>
void pair_up(const Elements& first, const Elements& second, Partners& partners, std::vector<bool>& taken,
             Match&& match) {
    for (std::size_t index = 0; index < first.size(); ++index) {
        for (std::size_t other = 0; other < second.size() && !partners[index]; ++other) {
            if (taken[other] || first[index].name != second[other].name || !match(first[index], second[other]))
                continue;
            partners[index] = other;
            taken[other] = true;
        }
    }
}

Partners partners(const Elements& first, const Elements& second) {
    Partners result(first.size());
    std::vector<bool> taken(second.size(), false);
    pair_up(first, second, result, taken,
            [](const Element& one, const Element& other) { return key_of(one) == key_of(other); });
    pair_up(first, second, result, taken, [](const Element& one, const Element&) { return may_change_key(one); });
    return result;
}

/// `hole A`, `shim 2`, `plate`.
std::string step(const Elements& siblings, std::size_t index) {
    const Element& element = siblings[index];
    if (const std::string key = key_of(element); !key.empty()) return element.name + " " + key;
    const auto alike = [&](const Element& other) { return other.name == element.name && key_of(other).empty(); };
    if (std::count_if(siblings.begin(), siblings.end(), alike) == 1) return element.name;
    const auto end = siblings.begin() + static_cast<std::ptrdiff_t>(index) + 1;
    return fmt::format("{} {}", element.name, std::count_if(siblings.begin(), end, alike));
}

std::string joined(const std::string& place, const std::string& step) {
    return place.empty() ? step : place + " / " + step;
}

/// A whole element in one line: `diameter 7/16 in, x 0 in`.
std::string described(const Element& element) {
    std::vector<std::string> parts;
    for (const auto& [name, value] : element.attributes) {
        if (name != key_name(element)) parts.push_back(fmt::format("{} {}", name, value));
    }
    for (std::size_t index = 0; index < element.children.size(); ++index) {
        parts.push_back(fmt::format("{} ({})", step(element.children, index), described(element.children[index])));
    }
    return parts.empty() ? std::string("given") : fmt::format("{}", fmt::join(parts, ", "));
}

class Walk {
  public:
    /// Two elements of one name.
    void compare(const Element& first, const Element& second, const std::string& place) {
        compare_attributes(first, second, place);
        compare_children(first.children, second.children, place);
    }
    [[nodiscard]] std::vector<Difference> take() { return std::move(differences_); }

  private:
    void add(const std::string& place, const std::string& first, const std::string& second) {
        if (first != second) differences_.push_back({place, first, second});
    }

    void compare_attributes(const Element& first, const Element& second, const std::string& place) {
        for (const auto& [name, value] : first.attributes) add(joined(place, name), value, attribute(second, name));
        for (const auto& [name, value] : second.attributes) {
            if (find_attribute(first, name) == nullptr) add(joined(place, name), {}, value);
        }
    }

    void compare_children(const Elements& first, const Elements& second, const std::string& place) {
        const Partners matched = partners(first, second);
        std::size_t told = 0;  // of the second's, those without a partner before this one
        const auto tell_new = [&](std::size_t end) {
            for (; told < end; ++told) {
                if (std::find(matched.begin(), matched.end(), told) != matched.end()) continue;
                add(joined(place, step(second, told)), {}, described(second[told]));
            }
        };
        for (std::size_t index = 0; index < first.size(); ++index) {
            const std::string here = joined(place, step(first, index));
            if (!matched[index]) {
                add(here, described(first[index]), {});
                continue;
            }
            tell_new(std::max(told, *matched[index]));
            compare(first[index], second[*matched[index]], here);
        }
        tell_new(second.size());
    }

    std::vector<Difference> differences_;
};

/// What is written of the detail, with the plate itself beside the reference to it and without remarks.
Element compared(const model::BaseDetail& detail) {
    model::BaseDetail plain = detail;
    plain.remarks.clear();
    Element root = detail_element(plain);
    const auto* const deck = std::get_if<model::PlateOnDeck>(&detail.mount);
    if (deck == nullptr || !deck->plate_reference) return root;
    const auto reference = std::find_if(root.children.begin(), root.children.end(),
                                        [](const Element& child) { return child.name == "plate-from"; });
    root.children.insert(std::next(reference), plate_element(deck->plate));
    return root;
}

}  // namespace

std::vector<Difference> detail_differences(const model::BaseDetail& first, const model::BaseDetail& second) {
    Walk walk;
    walk.compare(compared(first), compared(second), {});
    return walk.take();
}

}  // namespace toehold::xml
