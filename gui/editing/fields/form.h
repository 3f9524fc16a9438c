#pragma once
// The vocabulary in which the groups describe their fields: each call adds one field over one value of a detail, and
// with it how a text becomes that value. A form holds references into the detail and the catalog it was made over, and
// is good for one setting: that may move what the others refer to.
#include "editing/fields.h"
#include "editing/fields/reading.h"

#include <functional>
#include <iterator>
#include <optional>
#include <string>
#include <vector>

namespace toehold::editing {

/// The last step of a field's path, its name in the trade, and what it means.
struct Named {
    std::string step;
    Phrase label, help;
};

/// Where fields stand: `path` without a slash at its end, the part they are of and further parts they concern.
struct Heading {
    std::string path;
    model::PartId part;
    Phrase group;
    std::vector<model::PartId> also = {};
};

struct Outcome {
    Phrase refusal;    ///< empty: done
    Phrase step = {};  ///< for the history; empty: the heading and the label
};
using Setter = std::function<Outcome(const std::string& text)>;

struct Entry {
    Field field;
    Setter set;
};

/// A value of the model, its word in the file, and what people call it.
template <class Value>
struct Word {
    Value value;
    const char* word;
    Phrase label;
};

struct Limits {
    int least = 0, most = 0;
};

class Form {
  public:
    Form(const catalog::Catalog& catalog, units::System system) : catalog_(catalog), system_(system) {}

    [[nodiscard]] const catalog::Catalog& catalog() const { return catalog_; }
    [[nodiscard]] units::System system() const { return system_; }
    [[nodiscard]] const std::vector<Entry>& entries() const { return entries_; }

    /// What is added from here on stands there.
    void at(Heading heading) { heading_ = std::move(heading); }

    void quantity(const Named& name, double& value, units::Kind kind, Range range = Range::positive);
    void length(const Named& name, double& value, Range range = Range::positive);
    /// Of a place, which may be negative.
    void place(const Named& name, double& value);
    /// The model's zero is `not given`, and the field empty.
    void given(const Named& name, double& value, units::Kind kind);
    /// Empty counts as zero.
    void zero_if_empty(const Named& name, double& value, units::Kind kind, Range range);
    void optional_quantity(const Named& name, std::optional<double>& value, units::Kind kind,
                           Range range = Range::positive);
    void optional_factor(const Named& name, std::optional<double>& value);
    void count(const Named& name, int& value, Limits limits);

    /// Empty: not specified.
    void text(const Named& name, std::string& value, std::vector<Choice> suggestions = {});
    void required_text(const Named& name, std::string& value);
    /// `renamed` is told the old id, once the new one stands.
    void id(const Named& name, std::string& value, const std::vector<std::string>& taken,
            const std::function<void(const std::string& old)>& renamed = nullptr);

    void yes_no(const Named& name, bool& value);
    void optional_yes_no(const Named& name, std::optional<bool>& value);
    void pick(const Named& name, std::string& value, std::vector<Choice> choices);
    void pick_or_none(const Named& name, std::string& value, std::vector<Choice> choices);
    /// A choice that may be empty, which `change` is then told.
    void optional_pick(const Named& name, const std::string& now, std::vector<Choice> choices,
                       const std::function<void(const std::string& chosen)>& change);

    template <class Words, class Value>
    void word(const Named& name, Value& value, const Words& words) {
        kind(name, word_of(value, words), choices_of(words),
             [&value, &words](const std::string& chosen) { value = *value_of<Value>(chosen, words); });
    }
    template <class Words, class Value>
    void optional_word(const Named& name, std::optional<Value>& value, const Words& words) {
        const std::string now = value ? word_of(*value, words) : std::string();
        optional_pick(name, now, choices_of(words),
                      [&value, &words](const std::string& chosen) { value = value_of<Value>(chosen, words); });
    }

    /// A choice that changes which other fields there are. `change` is called with another word than `now`.
    void kind(const Named& name, const std::string& now, std::vector<Choice> choices,
              const std::function<void(const std::string& chosen)>& change);
    /// Whether an optional part is described; `start` is what it starts with.
    template <class Part>
    void presence(const Named& name, std::optional<Part>& part, const Part& start) {
        switched(name, part.has_value(), [&part, start](bool wanted) {
            if (wanted) part = start;
            if (!wanted) part.reset();
        });
    }
    /// How many a list holds. `add` puts one more at its end or says why it cannot; `remove` takes the last.
    void list(const Named& name, std::size_t now, Limits limits, const std::function<Phrase()>& add,
              const std::function<void()>& remove);

    /// For what none of the above can say; `field` holds what `fresh` gave and the rest.
    [[nodiscard]] Field fresh(const Named& name, FieldKind kind) const;
    void add(Field field, Setter set);
    /// Lets something follow each setting of the fields added since there were `before` entries.
    void after(std::size_t before, const std::function<void()>& follow);

  private:
    template <class Words, class Value>
    static std::string word_of(Value value, const Words& words) {
        for (const auto& one : words) {
            if (one.value == value) return one.word;
        }
        return {};
    }
    template <class Value, class Words>
    static std::optional<Value> value_of(const std::string& word, const Words& words) {
        for (const auto& one : words) {
            if (one.word == word) return one.value;
        }
        return std::nullopt;
    }
    template <class Words>
    static std::vector<Choice> choices_of(const Words& words) {
        std::vector<Choice> choices;
        choices.reserve(std::size(words));
        for (const auto& one : words) choices.push_back({one.word, one.label});
        return choices;
    }
    void switched(const Named& name, bool now, const std::function<void(bool)>& change);
    void add_choice(const Named& name, const std::string& now, std::vector<Choice> choices, bool may_be_empty,
                    const std::function<void(const std::string& chosen)>& change);
    /// A quantity; the setter of an empty text is `clear`, absent where the field must be given.
    void add_quantity(Field field, std::optional<double> now, Range range, const std::function<void(double)>& set,
                      const std::function<void()>& clear);

    const catalog::Catalog& catalog_;
    units::System system_;
    Heading heading_;
    std::vector<Entry> entries_;
};

}  // namespace toehold::editing
