#include "editing/fields/form.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace toehold::editing {
namespace {

const std::vector<Choice>& yes_or_no() {
    static const std::vector<Choice> choices{{"yes", phrase("Yes")}, {"no", phrase("No")}};
    return choices;
}

/// What stands in the detail can always be chosen again, even if no catalog knows it.
void keep_known(std::vector<Choice>& choices, const std::string& now) {
    const auto is_now = [&](const Choice& choice) { return choice.value == now; };
    if (now.empty() || std::any_of(choices.begin(), choices.end(), is_now)) return;
    choices.insert(choices.begin(), {now, phrase("{}: not in any catalog", now)});
}

}  // namespace

Field Form::fresh(const Named& name, FieldKind kind) const {
    Field field;
    field.path = heading_.path.empty() ? name.step : heading_.path + "/" + name.step;
    field.part = heading_.part;
    field.group = heading_.group;
    field.label = name.label;
    field.help = name.help;
    field.kind = kind;
    field.also = heading_.also;
    return field;
}

void Form::add(Field field, Setter set) {
    // Two parts with one id are told of by `validate`; until then each must be within reach.
    const auto taken = [&](const Entry& entry) { return entry.field.path == field.path; };
    while (std::any_of(entries_.begin(), entries_.end(), taken)) field.path += "~";
    entries_.push_back({std::move(field), std::move(set)});
}

void Form::after(std::size_t before, const std::function<void()>& follow) {
    for (std::size_t index = before; index < entries_.size(); ++index) {
        entries_[index].set = [set = entries_[index].set, follow](const std::string& text) {
            Outcome outcome = set(text);
            if (outcome.refusal.empty()) follow();
            return outcome;
        };
    }
}

void Form::add_quantity(Field field, std::optional<double> now, Range range, const std::function<void(double)>& set,
                        const std::function<void()>& clear) {
    if (now) field.value = shown(*now, field.quantity, system_);
    field.may_be_empty = static_cast<bool>(clear);
    const auto setter = [label = field.label, kind = field.quantity, system = system_, range, set,
                         clear](const std::string& text) -> Outcome {
        if (trimmed(text).empty()) {
            if (!clear) return {must_be_given(label)};
            clear();
            return {};
        }
        const Reading<double> read = read_quantity(label, text, kind, system, range);
        if (!read.value) return {read.refusal};
        set(*read.value);
        return {};
    };
    add(std::move(field), setter);
}

void Form::quantity(const Named& name, double& value, units::Kind kind, Range range) {
    Field field = fresh(name, FieldKind::quantity);
    field.quantity = kind;
    add_quantity(
        std::move(field), value, range, [&value](double read) { value = read; }, nullptr);
}

void Form::length(const Named& name, double& value, Range range) { quantity(name, value, units::Kind::length, range); }

void Form::place(const Named& name, double& value) { quantity(name, value, units::Kind::length, Range::any); }

void Form::given(const Named& name, double& value, units::Kind kind) {
    Field field = fresh(name, FieldKind::quantity);
    field.quantity = kind;
    const std::optional<double> now = value == 0.0 ? std::nullopt : std::optional(value);
    add_quantity(
        std::move(field), now, Range::positive, [&value](double read) { value = read; }, [&value] { value = 0.0; });
}

void Form::zero_if_empty(const Named& name, double& value, units::Kind kind, Range range) {
    Field field = fresh(name, FieldKind::quantity);
    field.quantity = kind;
    add_quantity(
        std::move(field), value, range, [&value](double read) { value = read; }, [&value] { value = 0.0; });
}

void Form::optional_quantity(const Named& name, std::optional<double>& value, units::Kind kind, Range range) {
    Field field = fresh(name, FieldKind::quantity);
    field.quantity = kind;
    add_quantity(
        std::move(field), value, range, [&value](double read) { value = read; }, [&value] { value.reset(); });
}

void Form::optional_factor(const Named& name, std::optional<double>& value) {
    Field field = fresh(name, FieldKind::number);
    field.may_be_empty = true;
    if (value) field.value = fmt::format("{}", *value);
    add(std::move(field), [&value, label = name.label](const std::string& text) -> Outcome {
        if (trimmed(text).empty()) {
            value.reset();
            return {};
        }
        const Reading<double> read = read_factor(label, text);
        if (!read.value) return {read.refusal};
        value = read.value;
        return {};
    });
}

void Form::count(const Named& name, int& value, Limits limits) {
    Field field = fresh(name, FieldKind::count);
    field.value = std::to_string(value);
    add(std::move(field), [&value, label = name.label, limits](const std::string& text) -> Outcome {
        const Reading<int> read = read_count(label, text, limits.least, limits.most);
        if (!read.value) return {read.refusal};
        value = *read.value;
        return {};
    });
}

void Form::text(const Named& name, std::string& value, std::vector<Choice> suggestions) {
    Field field = fresh(name, FieldKind::text);
    field.value = value;
    field.may_be_empty = true;
    field.choices = std::move(suggestions);
    add(std::move(field), [&value, label = name.label](const std::string& text) -> Outcome {
        if (text == value) return {};
        const Reading<std::string> read = read_words(label, text);
        if (!read.value) return {read.refusal};
        value = *read.value;
        return {};
    });
}

void Form::required_text(const Named& name, std::string& value) {
    Field field = fresh(name, FieldKind::text);
    field.value = value;
    add(std::move(field), [&value, label = name.label](const std::string& text) -> Outcome {
        if (text == value) return {};
        const Reading<std::string> read = read_words(label, text);
        if (!read.value) return {read.refusal};
        if (read.value->empty()) return {must_be_given(label)};
        value = *read.value;
        return {};
    });
}

void Form::id(const Named& name, std::string& value, const std::vector<std::string>& taken,
              const std::function<void(const std::string& old)>& renamed) {
    Field field = fresh(name, FieldKind::text);
    field.value = value;
    add(std::move(field), [&value, taken, renamed, label = name.label](const std::string& text) -> Outcome {
        if (trimmed(text) == value) return {};
        const Reading<std::string> read = read_id(label, text, taken);
        if (!read.value) return {read.refusal};
        const std::string old = std::exchange(value, *read.value);
        if (renamed) renamed(old);
        return {{}, phrase("Rename {} to {}", old, value)};
    });
}

void Form::switched(const Named& name, bool now, const std::function<void(bool)>& change) {
    Field field = fresh(name, FieldKind::yes_no);
    field.value = now ? "yes" : "no";
    field.choices = yes_or_no();
    add(std::move(field), [now, change, label = name.label](const std::string& text) -> Outcome {
        const Reading<std::string> read = read_choice(label, text, yes_or_no());
        if (!read.value) return {read.refusal};
        const bool wanted = *read.value == "yes";
        if (wanted != now) change(wanted);
        return {};
    });
}

void Form::yes_no(const Named& name, bool& value) {
    switched(name, value, [&value](bool wanted) { value = wanted; });
}

void Form::optional_yes_no(const Named& name, std::optional<bool>& value) {
    static const std::array<Word<bool>, 2> words{{{true, "yes", phrase("Yes")}, {false, "no", phrase("No")}}};
    optional_word(name, value, words);
    entries_.back().field.kind = FieldKind::yes_no;
}

void Form::add_choice(const Named& name, const std::string& now, std::vector<Choice> choices, bool may_be_empty,
                      const std::function<void(const std::string& chosen)>& change) {
    Field field = fresh(name, FieldKind::choice);
    field.value = now;
    field.may_be_empty = may_be_empty;
    keep_known(choices, now);
    field.choices = choices;
    const auto setter = [now, choices, may_be_empty, change, label = name.label](const std::string& text) -> Outcome {
        if (trimmed(text).empty()) {
            if (!may_be_empty) return {must_be_given(label)};
            if (!now.empty()) change({});
            return {};
        }
        const Reading<std::string> read = read_choice(label, text, choices);
        if (!read.value) return {read.refusal};
        if (*read.value != now) change(*read.value);
        return {};
    };
    add(std::move(field), setter);
}

void Form::pick(const Named& name, std::string& value, std::vector<Choice> choices) {
    kind(name, value, std::move(choices), [&value](const std::string& chosen) { value = chosen; });
}

void Form::pick_or_none(const Named& name, std::string& value, std::vector<Choice> choices) {
    optional_pick(name, value, std::move(choices), [&value](const std::string& chosen) { value = chosen; });
}

void Form::optional_pick(const Named& name, const std::string& now, std::vector<Choice> choices,
                         const std::function<void(const std::string& chosen)>& change) {
    add_choice(name, now, std::move(choices), true, change);
}

void Form::kind(const Named& name, const std::string& now, std::vector<Choice> choices,
                const std::function<void(const std::string& chosen)>& change) {
    add_choice(name, now, std::move(choices), false, change);
}

void Form::list(const Named& name, std::size_t now, Limits limits, const std::function<Phrase()>& add_one,
                const std::function<void()>& remove_one) {
    Field field = fresh(name, FieldKind::count);
    field.value = std::to_string(now);
    const auto setter = [now, limits, add_one, remove_one, label = name.label](const std::string& text) -> Outcome {
        const Reading<int> read = read_count(label, text, limits.least, limits.most);
        if (!read.value) return {read.refusal};
        const auto wanted = static_cast<std::size_t>(*read.value);
        for (std::size_t count = now; count > wanted; --count) remove_one();
        for (std::size_t count = now; count < wanted; ++count) {
            if (const Phrase refusal = add_one(); !refusal.empty()) return {refusal};
        }
        return {{}, phrase("Change: {}", label)};
    };
    add(std::move(field), setter);
}

}  // namespace toehold::editing
