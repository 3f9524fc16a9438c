#include "xml/document/element_reader.h"

#include "xml/document/characters.h"

#include <fmt/format.h>
#include <tinyxml2.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <map>
#include <set>

namespace toehold::xml {

using tinyxml2::XMLAttribute;
using tinyxml2::XMLElement;

namespace {

using format::phrase;
using format::verbatim;

/// What a file says, cut to one line.
format::Phrase shown(std::string_view found) { return found.empty() ? format::Phrase() : verbatim(excerpt(found)); }

/// More than any list of a document can need: a plate has 100 holes at most.
constexpr std::size_t most_ids = 200;

}  // namespace

struct ElementReader::Cursor {
    const XMLElement* element = nullptr;
    std::string path;
    Reading* reading = nullptr;
    std::set<std::string, std::less<>> attributes;  ///< asked for
    std::set<std::string, std::less<>> children;    ///< asked for
    bool ignore_rest = false;

    void report(int line, std::string_view found, const format::Phrase& accepted, const format::Phrase& message) const {
        if (reading->problems.size() >= most_problems_recorded) return;
        reading->problems.push_back({{}, line, path, shown(found), accepted, message});
    }
    void report_leftovers() const;
};

namespace {

format::Phrase listed(const std::set<std::string, std::less<>>& names) {
    return names.empty() ? phrase("none") : verbatim(fmt::format("{}", fmt::join(names, ", ")));
}

/// A catalogue knows these under their English words.
format::Phrase accepted_for(units::Kind kind) { return {std::string(units::accepted(kind)), {}}; }

const XMLElement* next_named(const XMLElement* element, const std::string& name) {
    return element->NextSiblingElement(name.c_str());
}

/// What an XML editor puts on a root element beside our own attributes.
bool belongs_to_xml(std::string_view attribute) {
    return attribute == "xmlns" || attribute == "xmlns:xsi" || attribute == "xsi:schemaLocation";
}

}  // namespace

void ElementReader::Cursor::report_leftovers() const {
    for (const XMLAttribute* item = element->FirstAttribute(); item != nullptr; item = item->Next()) {
        if (attributes.contains(item->Name()) || (path.empty() && belongs_to_xml(item->Name()))) continue;
        report(item->GetLineNum(), item->Name(), listed(attributes),
               phrase("<{}> has no attribute of this name", element->Name()));
    }
    for (const XMLElement* item = element->FirstChildElement(); item != nullptr; item = item->NextSiblingElement()) {
        if (children.contains(item->Name())) continue;
        report(item->GetLineNum(), item->Name(), listed(children),
               phrase("<{}> has no element of this name", element->Name()));
    }
}

ElementReader::ElementReader(const XMLElement& element, std::string path, Reading& reading)
    : cursor_(std::make_unique<Cursor>()) {
    cursor_->element = &element;
    cursor_->path = std::move(path);
    cursor_->reading = &reading;
    reading.lines.emplace(cursor_->path, element.GetLineNum());
}

ElementReader::ElementReader(ElementReader&&) noexcept = default;
ElementReader& ElementReader::operator=(ElementReader&&) noexcept = default;

ElementReader::~ElementReader() {
    if (cursor_ && !cursor_->ignore_rest) cursor_->report_leftovers();
}

const std::string& ElementReader::path() const { return cursor_->path; }
int ElementReader::line() const { return cursor_->element->GetLineNum(); }
std::string_view ElementReader::name() const { return cursor_->element->Name(); }
void ElementReader::ignore_rest() { cursor_->ignore_rest = true; }

void ElementReader::report(const format::Phrase& message, std::string_view attribute, const format::Phrase& accepted) {
    const XMLAttribute* const item =
        attribute.empty() ? nullptr : cursor_->element->FindAttribute(std::string(attribute).c_str());
    const int at = item == nullptr ? line() : item->GetLineNum();
    cursor_->report(at, item == nullptr ? "" : item->Value(), accepted, message);
}

void ElementReader::report(const model::Problems& problems) {
    cursor_->reading->problems.insert(cursor_->reading->problems.end(), problems.begin(), problems.end());
}

void ElementReader::stands_for(std::string_view path) { cursor_->reading->lines.emplace(path, line()); }

bool ElementReader::has(std::string_view attribute) const {
    return cursor_->element->Attribute(std::string(attribute).c_str()) != nullptr;
}

const char* ElementReader::find(std::string_view attribute) {
    const std::string name(attribute);
    cursor_->attributes.insert(name);
    return cursor_->element->Attribute(name.c_str());
}

const char* ElementReader::required(std::string_view attribute, const format::Phrase& accepted) {
    const char* const value = find(attribute);
    if (value == nullptr) {
        report(phrase("<{}> needs the attribute {}", name(), attribute), {}, accepted);
    }
    return value;
}

std::string ElementReader::text(std::string_view attribute) {
    const char* const value = required(attribute, phrase("some text"));
    if (value == nullptr) return {};
    if (trimmed(value).empty()) report(phrase("{} is empty", attribute), {}, phrase("some text"));
    return value;
}

std::string ElementReader::optional_text(std::string_view attribute) {
    const char* const value = find(attribute);
    return value == nullptr ? std::string() : std::string(value);
}

std::string ElementReader::id(std::string_view attribute) {
    const format::Phrase accepted = phrase("a name without blanks, quotes or square brackets");
    const char* const value = required(attribute, accepted);
    if (value == nullptr) return {};
    const std::string_view word = value;
    if (word.empty() || word.find_first_of(" \t\r\n\"'[]") != std::string_view::npos) {
        report(phrase("{} is not a valid id", attribute), attribute, accepted);
    }
    return value;
}

std::string ElementReader::optional_id(std::string_view attribute) {
    return find(attribute) == nullptr ? std::string() : id(attribute);
}

std::vector<std::string> ElementReader::ids(std::string_view attribute) {
    std::vector<std::string> result;
    const char* const value = find(attribute);
    if (value == nullptr) return result;
    std::string_view rest = trimmed(value);
    while (!rest.empty()) {
        if (result.size() == most_ids) {
            report(phrase("{} names too many", attribute), attribute, phrase("at most {}", most_ids));
            return result;
        }
        const std::string_view word = rest.substr(0, rest.find_first_of(" \t\r\n"));
        if (std::find(result.begin(), result.end(), word) != result.end()) {
            report(phrase("{} names \"{}\" twice", attribute, word), attribute, phrase("each id once"));
        }
        result.emplace_back(word);
        rest = trimmed(rest.substr(word.size()));
    }
    if (result.empty()) report(phrase("{} names nothing", attribute), {}, phrase("ids separated by blanks"));
    return result;
}

double ElementReader::checked_sign(std::string_view attribute, double value, Sign sign) {
    if (sign == Sign::positive && !(value > 0.0)) {
        report(phrase("{} must be more than zero", attribute), attribute, phrase("a value above zero"));
    }
    if (sign == Sign::not_negative && !(value >= 0.0)) {
        report(phrase("{} must not be negative", attribute), attribute, phrase("zero or more"));
    }
    return value;
}

double ElementReader::quantity(std::string_view attribute, units::Kind kind, Sign sign) {
    const char* const value = required(attribute, accepted_for(kind));
    return value == nullptr ? 0.0 : optional_quantity(attribute, kind, sign).value_or(0.0);
}

std::optional<double> ElementReader::optional_quantity(std::string_view attribute, units::Kind kind, Sign sign) {
    const char* const value = find(attribute);
    if (value == nullptr) return std::nullopt;
    const units::Parsed parsed = units::parse(value, kind);
    if (parsed.value) return checked_sign(attribute, *parsed.value, sign);
    const bool is_bare = units::parse_number(trimmed(value)).has_value();
    report(is_bare ? phrase("{} has no unit", attribute) : phrase("{} cannot be read", attribute), attribute,
           accepted_for(kind));
    return std::nullopt;
}

double ElementReader::number(std::string_view attribute, Sign sign) {
    const char* const value = required(attribute, phrase("a number"));
    return value == nullptr ? 0.0 : optional_number(attribute, sign).value_or(0.0);
}

std::optional<double> ElementReader::optional_number(std::string_view attribute, Sign sign) {
    const char* const value = find(attribute);
    if (value == nullptr) return std::nullopt;
    const std::optional<double> parsed = units::parse_number(value);
    if (parsed) return checked_sign(attribute, *parsed, sign);
    report(phrase("{} is not a number", attribute), attribute, phrase("a plain number such as 1.6"));
    return std::nullopt;
}

int ElementReader::count(std::string_view attribute) {
    constexpr int most = 10000;
    const format::Phrase accepted = phrase("a whole number from 1 to 10000");
    const char* const value = required(attribute, accepted);
    if (value == nullptr) return 0;
    const std::string_view word = trimmed(value);
    int result = 0;
    const auto parsed = std::from_chars(word.data(), word.data() + word.size(), result);
    const bool whole = parsed.ec == std::errc() && parsed.ptr == word.data() + word.size();
    if (whole && result >= 1 && result <= most) return result;
    report(phrase("{} is not a count", attribute), attribute, accepted);
    return 0;
}

std::optional<std::size_t> ElementReader::word_index(std::string_view attribute,
                                                     const std::vector<std::string_view>& words, bool required) {
    const format::Phrase accepted = verbatim(fmt::format("{}", fmt::join(words, ", ")));
    const char* const value = required ? this->required(attribute, accepted) : find(attribute);
    if (value == nullptr) return std::nullopt;
    const auto found = std::find(words.begin(), words.end(), std::string_view(value));
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    report(phrase("{} is none of the accepted words", attribute), attribute, accepted);
    return std::nullopt;
}

namespace {

constexpr std::array<Word<bool>, 2> yes_or_no{{{"yes", true}, {"no", false}}};

}  // namespace

bool ElementReader::yes_no(std::string_view attribute) { return choice<bool>(attribute, yes_or_no); }

std::optional<bool> ElementReader::optional_yes_no(std::string_view attribute) {
    return optional_choice<bool>(attribute, yes_or_no);
}

ElementReader ElementReader::make_child(const XMLElement& element, const std::string& step) {
    return {element, cursor_->path.empty() ? step : cursor_->path + "/" + step, *cursor_->reading};
}

std::optional<ElementReader> ElementReader::only_child(std::string_view name, bool required) {
    const std::string written(name);
    cursor_->children.insert(written);
    const XMLElement* const first = cursor_->element->FirstChildElement(written.c_str());
    if (first == nullptr) {
        if (required) report(phrase("<{}> needs an element <{}>", this->name(), name));
        return std::nullopt;
    }
    for (const XMLElement* more = next_named(first, written); more != nullptr; more = next_named(more, written)) {
        cursor_->report(more->GetLineNum(), "<" + written + ">", phrase("one"),
                        phrase("only one <{}> is allowed in <{}>; the first is on line {}", name, this->name(),
                               first->GetLineNum()));
    }
    return make_child(*first, written);
}

std::optional<ElementReader> ElementReader::child(std::string_view name) { return only_child(name, true); }
std::optional<ElementReader> ElementReader::optional_child(std::string_view name) { return only_child(name, false); }

std::vector<ElementReader> ElementReader::children(std::string_view name, std::string_view key) {
    return children(std::span<const std::string_view>(&name, 1), key);
}

std::vector<ElementReader> ElementReader::children(std::span<const std::string_view> names, std::string_view key) {
    const std::string key_name(key);
    std::map<std::string, int, std::less<>> places;
    for (const std::string_view name : names) {
        cursor_->children.emplace(name);
        places.emplace(name, 0);
    }
    std::vector<ElementReader> result;
    LineMap seen;
    const XMLElement* item = cursor_->element->FirstChildElement();
    for (; item != nullptr; item = item->NextSiblingElement()) {
        const auto place = places.find(std::string_view(item->Name()));
        if (place == places.end()) continue;
        ++place->second;
        const char* const value = item->Attribute(key_name.c_str());
        const std::string bracket = value == nullptr ? std::to_string(place->second) : std::string(value);
        result.push_back(make_child(*item, fmt::format("{}[{}]", item->Name(), bracket)));
        if (value == nullptr) continue;
        const auto [first, added] = seen.emplace(bracket, item->GetLineNum());
        if (!added) result.back().report(phrase("this {} is already used on line {}", key, first->second), key);
    }
    return result;
}

std::optional<ElementReader> ElementReader::one_of(std::span<const std::string_view> names, bool required) {
    const std::string all = fmt::format("<{}>", fmt::join(names, ">, <"));
    std::optional<ElementReader> found;
    for (const std::string_view name : names) {
        std::optional<ElementReader> candidate = only_child(name, false);
        if (!candidate) continue;
        if (found) {
            candidate->report(phrase("<{}> takes only one of {}", this->name(), all), {},
                              phrase("<{}> alone, or this alone", found->name()));
            candidate->ignore_rest();
        } else {
            found = std::move(candidate);
        }
    }
    if (!found && required) report(phrase("<{}> needs one of {}", name(), all));
    return found;
}

std::optional<ElementReader> open_root(const XMLElement& root, std::string_view name, Reading& reading, int version) {
    const std::string stem = fmt::format("urn:toehold:{}:", name);
    const std::string read_here = stem + std::to_string(version);
    const auto refuse = [&](std::string_view found, const format::Phrase& accepted, const format::Phrase& message) {
        reading.problems.push_back({{}, root.GetLineNum(), {}, shown(found), accepted, message});
        return std::nullopt;
    };
    if (root.Name() != name) {
        return refuse(root.Name(), verbatim(std::string(name)), phrase("this is another kind of document"));
    }
    const char* const space = root.Attribute("xmlns");
    if (space == nullptr) {
        return refuse({}, verbatim(fmt::format("xmlns=\"{}\"", read_here)),
                      phrase("<{}> does not say its version", name));
    }
    if (space == read_here) return ElementReader(root, {}, reading);
    if (std::string_view(space).starts_with(stem)) {
        return refuse(space, verbatim(read_here), phrase("this program does not read this version of the document"));
    }
    return refuse(space, verbatim(read_here), phrase("this is not a document of this program"));
}

}  // namespace toehold::xml
