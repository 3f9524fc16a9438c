#pragma once
// What checks find of one demand on one detail that no basis changes: the plate's worst strips, say, which the other
// choices of the assumptions would find again and again. Each kind of value is found once, by the first check that asks
// for it, and shared by every run of the checks on the same demand.
//
//     const auto needs = input.once<PlateNeeds>([&] { return find_plate_needs(input); });
//
// A value is known by its type. What it is found from: the detail without its basis, and the demand. One thread at a
// time.
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
    /// `find()` -> Value, asked the first time alone; never null.
    template <class Value, class Find>
    [[nodiscard]] std::shared_ptr<const Value> once(Find&& find) {
        Entry& entry = entries_[std::type_index(typeid(Value))];
        if (!entry.value) entry = entry_of<Value>(std::make_shared<const Value>(std::forward<Find>(find)()));
        return std::static_pointer_cast<const Value>(entry.value);
    }

    /// For the same detail under every force `factor` times as large, > 0: what grows with the forces is grown, the
    /// rest is left to be found again.
    [[nodiscard]] Prepared grown(double factor) const {
        Prepared other;
        for (const auto& [type, entry] : entries_) {
            if (entry.value && entry.grow) other.entries_.emplace(type, entry.grow(factor));
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

    std::map<std::type_index, Entry> entries_;
};

}  // namespace toehold::checks
