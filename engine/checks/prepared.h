#pragma once
// What checks find of one demand on one detail that no basis changes: the plate's worst strips, say, which the other
// choices of the assumptions would find again and again. Each kind of value is found once, by the first check that asks
// for it, and shared by every run of the checks on the same demand.
//
//     const auto edges = input.once<ClearEdges>([&] { return clear_edges(input); });
//
// A value is known by its type, and by a key where one type is found in several ways, as under another choice of the
// basis. What it is found from: the detail without its basis, the key, and the demand. One thread at a time.
#include <concepts>
#include <functional>
#include <map>
#include <memory>
#include <typeindex>
#include <typeinfo>
#include <utility>

namespace toehold::checks {

/// A value in proportion to the forces can say what it is under forces so many times as large.
template <class Value>
concept Grows = requires(const Value& value, double factor) {
    { value.grown(factor) } -> std::same_as<Value>;
};

class Prepared {
  public:
    /// `find()` -> Value, asked the first time alone for each `key`; never null.
    template <class Value, class Find>
    [[nodiscard]] std::shared_ptr<const Value> once(Find&& find, int key = 0) {
        Entry& entry = entries_[{std::type_index(typeid(Value)), key}];
        if (!entry.value) entry = entry_of<Value>(std::make_shared<const Value>(std::forward<Find>(find)()));
        return std::static_pointer_cast<const Value>(entry.value);
    }

    /// For the same detail under every force `factor` times as large, > 0: what grows with the forces is grown, the
    /// rest is left to be found again.
    [[nodiscard]] Prepared grown(double factor) const {
        Prepared other;
        for (const auto& [known_by, entry] : entries_) {
            if (entry.value && entry.grow) other.entries_.emplace(known_by, entry.grow(factor));
        }
        return other;
    }

  private:
    struct Entry {
        std::shared_ptr<const void> value;
        std::function<Entry(double)> grow = {};  ///< empty: this kind of value does not grow in proportion
    };

    template <class Value>
    static Entry entry_of(std::shared_ptr<const Value> value) {
        Entry entry{value};
        if constexpr (Grows<Value>) {
            entry.grow = [value](double factor) {
                return entry_of<Value>(std::make_shared<const Value>(value->grown(factor)));
            };
        }
        return entry;
    }

    std::map<std::pair<std::type_index, int>, Entry> entries_;
};

}  // namespace toehold::checks
