#include "drawing/parts.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstddef>

namespace toehold::drawing {
namespace {

struct Mention {
    std::size_t at = 0;
    std::string part;
};

/// Letters, digits and what ids are made of hang together; a blank, a comma or the end parts them.
bool within_word(std::string_view text, std::size_t at) {
    return at < text.size() && text[at] != ' ' && text[at] != ',' && text[at] != ';';
}

/// Place of the words where they stand alone; npos: nowhere.
std::size_t find_words(std::string_view text, std::string_view words) {
    for (std::size_t at = text.find(words); at != std::string_view::npos; at = text.find(words, at + 1)) {
        const bool starts = at == 0 || !within_word(text, at - 1);
        if (starts && !within_word(text, at + words.size())) return at;
    }
    return std::string_view::npos;
}

std::string_view kind_of(std::string_view part) { return part.substr(0, part.find(' ')); }

struct Name {
    std::string_view word, kind;
};
/// The words by which subjects call a part that has an id.
constexpr std::array<Name, 9> names_with_id = {{{"anchor", "anchor"},
                                                {"hole", "anchor"},
                                                {"shim", "shim"},
                                                {"block", "block"},
                                                {"joist", "joist"},
                                                {"rim", "rim"},
                                                {"support", "support"},
                                                {"ledger", "support"},
                                                {"beam", "support"}}};
/// The words that mean every part of a kind.
constexpr std::array<Name, 15> names_of_all = {{{"push", "push"},
                                                {"guard", "guard"},
                                                {"plate", "plate"},
                                                {"base", "plate"},
                                                {"anchors", "anchor"},
                                                {"decking", "decking"},
                                                {"boards", "decking"},
                                                {"shims", "shim"},
                                                {"blocks", "block"},
                                                {"joists", "joist"},
                                                {"rims", "rim"},
                                                {"supports", "support"},
                                                {"framing", "block"},
                                                {"framing", "joist"},
                                                {"framing", "rim"}}};

void mention(std::vector<Mention>& mentions, std::string_view text, std::string_view words, const std::string& part) {
    const std::size_t at = find_words(text, words);
    if (at != std::string_view::npos) mentions.push_back({at, part});
}

void mention_with_id(std::vector<Mention>& mentions, std::string_view subject, const std::string& part) {
    const std::string_view kind = kind_of(part);
    const std::string id = id_of(part, kind);
    if (id.empty()) return;
    for (const Name& name : names_with_id) {
        if (name.kind == kind) mention(mentions, subject, std::string(name.word) + " " + id, part);
    }
}

void mention_of_all(std::vector<Mention>& mentions, std::string_view subject, const std::string& part) {
    for (const Name& name : names_of_all) {
        if (name.kind == kind_of(part)) mention(mentions, subject, name.word, part);
    }
}

/// A weld is named by what it joins (`weld of the post`); a shoe is drawn with the post that stands in it.
void mention_foot(std::vector<Mention>& mentions, std::string_view subject, const std::string& part) {
    const bool weld = find_words(subject, "weld") != std::string_view::npos;
    if (part == "weld" && weld) mention(mentions, subject, "weld", part);
    if (part != "post" || weld) return;
    mention(mentions, subject, "post", part);
    mention(mentions, subject, "shoe", part);
}

std::vector<Mention> mentions_in(std::string_view subject, const model::BaseDetail& detail) {
    std::vector<Mention> mentions;
    for (const std::string& part : drawing::parts(detail)) {
        mention_with_id(mentions, subject, part);
        mention_of_all(mentions, subject, part);
        mention_foot(mentions, subject, part);
    }
    return mentions;
}

/// A fastener's name is the user's own and may hold any word, so it is not read for others.
std::vector<std::string> anchors_with(std::string_view fastener, const model::BaseDetail& detail) {
    std::vector<std::string> found;
    for (const model::Hole& hole : on_deck(detail).plate.holes) {
        const model::AnchorGroup* group = model::anchor_group(detail, hole.id);
        const auto* reported = group ? std::get_if<model::ReportedFastener>(&group->fastener) : nullptr;
        if (reported && reported->name == fastener) found.push_back(anchor_part(hole.id));
    }
    return found;
}

template <typename Range>
void append(std::vector<std::string>& all, const std::string& kind, const Range& range) {
    for (const auto& one : range) all.push_back(kind + " " + one.id);
}

}  // namespace

std::string anchor_part(std::string_view id) { return "anchor " + std::string(id); }

std::string id_of(std::string_view part, std::string_view kind) {
    const bool has_id =
        part.size() > kind.size() + 1 && part.substr(0, kind.size()) == kind && part[kind.size()] == ' ';
    return has_id ? std::string(part.substr(kind.size() + 1)) : std::string();
}

bool contains(const std::vector<std::string>& parts, std::string_view part) {
    return std::find(parts.begin(), parts.end(), part) != parts.end();
}

std::vector<std::string> parts(const model::BaseDetail& detail) {
    std::vector<std::string> all = {"push", "guard", "post"};
    if (on_deck(detail).weld) all.emplace_back("weld");
    all.emplace_back("plate");
    append(all, "anchor", on_deck(detail).plate.holes);
    if (on_deck(detail).layers.decking) all.emplace_back("decking");
    for (std::size_t i = 1; i <= on_deck(detail).layers.shims.size(); ++i) all.push_back("shim " + std::to_string(i));
    append(all, "block", detail.framing.blocks);
    if (detail.framing.joists) append(all, "joist", detail.framing.joists->members);
    append(all, "rim", detail.framing.rims);
    append(all, "support", detail.framing.supports);
    return all;
}

std::vector<std::string> parts_of_subject(std::string_view subject, const model::BaseDetail& detail) {
    constexpr std::string_view fastener = "fastener ";
    if (subject.substr(0, fastener.size()) == fastener) return anchors_with(subject.substr(fastener.size()), detail);
    std::vector<Mention> mentions = mentions_in(subject, detail);
    std::stable_sort(mentions.begin(), mentions.end(), [](const Mention& a, const Mention& b) { return a.at < b.at; });
    std::vector<std::string> found;
    for (const Mention& one : mentions) {
        if (std::find(found.begin(), found.end(), one.part) == found.end()) found.push_back(one.part);
    }
    return found;
}

}  // namespace toehold::drawing
