#pragma once
// A cursor over one element that turns every surprise into a problem: what is missing, what cannot be read, and, when
// the cursor goes out of scope, every attribute and child nobody asked for. So a reader need only ask for what it
// knows, and nothing in a file is ever passed over in silence.
//
// A value that cannot be read is recorded and a harmless one returned (empty, zero, the first word): reading goes on
// to find the other problems, and whoever owns the `Reading` drops the result if it has any.
#include "units/quantity.h"
#include "xml/document/element.h"
#include "xml/document/reading.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tinyxml2 {
class XMLElement;
}

namespace toehold::xml {

enum class Sign { any, not_negative, positive };

class ElementReader {
  public:
    /// `path` as in model::Problem::element; empty for the root.
    ElementReader(const tinyxml2::XMLElement& element, std::string path, Reading& reading);
    ElementReader(ElementReader&&) noexcept;
    ElementReader& operator=(ElementReader&&) noexcept;
    /// Reports what nobody asked for.
    ~ElementReader();

    [[nodiscard]] const std::string& path() const;
    [[nodiscard]] int line() const;
    /// The element's own name.
    [[nodiscard]] std::string_view name() const;

    // Attributes. Each name may be asked for more than once.
    [[nodiscard]] bool has(std::string_view attribute) const;
    /// Required, and more than blanks.
    [[nodiscard]] std::string text(std::string_view attribute);
    /// Empty when it is not there.
    [[nodiscard]] std::string optional_text(std::string_view attribute);
    /// Required: a name others refer to, without blanks, quotes or square brackets.
    [[nodiscard]] std::string id(std::string_view attribute = "id");
    [[nodiscard]] std::string optional_id(std::string_view attribute);
    /// Ids separated by blanks; empty when the attribute is not there, a problem when it is there and names none.
    [[nodiscard]] std::vector<std::string> ids(std::string_view attribute);

    /// In the engine's unit.
    [[nodiscard]] double quantity(std::string_view attribute, units::Kind kind, Sign sign);
    [[nodiscard]] std::optional<double> optional_quantity(std::string_view attribute, units::Kind kind, Sign sign);
    [[nodiscard]] double number(std::string_view attribute, Sign sign);
    [[nodiscard]] std::optional<double> optional_number(std::string_view attribute, Sign sign);
    /// A whole number from 1 to 10,000.
    [[nodiscard]] int count(std::string_view attribute);

    /// One of the words; the first when there is a problem.
    template <class Value>
    [[nodiscard]] Value choice(std::string_view attribute, std::span<const Word<Value>> words) {
        return required_choice(attribute, words).value_or(words.front().value);
    }
    /// The same, absent when there is a problem: where what follows depends on it.
    template <class Value>
    [[nodiscard]] std::optional<Value> required_choice(std::string_view attribute, std::span<const Word<Value>> words) {
        const std::optional<std::size_t> index = word_index(attribute, words_of(words), true);
        if (!index) return std::nullopt;
        return words[*index].value;
    }
    template <class Value>
    [[nodiscard]] std::optional<Value> optional_choice(std::string_view attribute, std::span<const Word<Value>> words) {
        const std::optional<std::size_t> index = word_index(attribute, words_of(words), false);
        if (!index) return std::nullopt;
        return words[*index].value;
    }
    [[nodiscard]] bool yes_no(std::string_view attribute);
    [[nodiscard]] std::optional<bool> optional_yes_no(std::string_view attribute);

    // Children. Paths: `plate` for the one, `hole[A]` for one of many.
    /// Required, once.
    [[nodiscard]] std::optional<ElementReader> child(std::string_view name);
    /// Once at most.
    [[nodiscard]] std::optional<ElementReader> optional_child(std::string_view name);
    /// Any number, in order. In brackets stands the attribute `key` where it is given, else the place from 1; the same
    /// key twice is a problem.
    [[nodiscard]] std::vector<ElementReader> children(std::string_view name, std::string_view key = "id");
    /// Of several names, mixed in the order of the file; a key is used once among them all.
    [[nodiscard]] std::vector<ElementReader> children(std::span<const std::string_view> names,
                                                      std::string_view key = "id");
    /// Exactly one child of these names; `name()` says which. With `required` false, one at most.
    [[nodiscard]] std::optional<ElementReader> one_of(std::span<const std::string_view> names, bool required = true);

    /// A problem with this element, or with one of its attributes (whose value is then shown).
    void report(const format::Phrase& message, std::string_view attribute = {}, const format::Phrase& accepted = {});
    /// Problems of another file that this element refers to.
    void report(const model::Problems& problems);
    /// A problem with `path`, where that is no element of this file, has this element's line.
    void stands_for(std::string_view path);
    /// Says nothing of what was not asked for: after a problem that leaves open what belongs here.
    void ignore_rest();

  private:
    struct Cursor;

    template <class Value>
    static std::vector<std::string_view> words_of(std::span<const Word<Value>> words) {
        std::vector<std::string_view> result;
        for (const Word<Value>& word : words) result.push_back(word.word);
        return result;
    }
    const char* find(std::string_view attribute);
    const char* required(std::string_view attribute, const format::Phrase& accepted);
    double checked_sign(std::string_view attribute, double value, Sign sign);
    std::optional<std::size_t> word_index(std::string_view attribute, const std::vector<std::string_view>& words,
                                          bool required);
    std::optional<ElementReader> only_child(std::string_view name, bool required);
    ElementReader make_child(const tinyxml2::XMLElement& element, const std::string& step);

    std::unique_ptr<Cursor> cursor_;
};

/// The root element of a document of ours: its name and its namespace `urn:toehold:<name>:<version>`.
/// Absent, with a problem, when it is another document or a version this program does not read.
[[nodiscard]] std::optional<ElementReader> open_root(const tinyxml2::XMLElement& root, std::string_view name,
                                                     Reading& reading, int version = 1);

}  // namespace toehold::xml
