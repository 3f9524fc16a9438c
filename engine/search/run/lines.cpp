#include "search/run/lines.h"

#include <nlohmann/json.hpp>

#include <array>
#include <limits>
#include <stdexcept>

namespace toehold::search {
namespace {

// Keys keep the order in which they are written; an infinite number is written as null.
using Json = nlohmann::ordered_json;
using model::PartId;
using model::PartKind;
using model::PartPiece;

constexpr std::array<Stage, 4> stages = {Stage::choice, Stage::finding, Stage::probe, Stage::whole};

Json json_of(const PartId& part) {
    Json json = {{"kind", model::kind_word(part.kind)}, {"id", part.id}};
    if (part.piece != PartPiece::whole) json["piece"] = static_cast<int>(part.piece);
    if (part.at_kind != PartKind::none) json["at"] = {{"kind", model::kind_word(part.at_kind)}, {"id", part.at_id}};
    return json;
}

Json json_of(const Judgement& judgement, Candidate last, const std::string& space) {
    Json json = {{"space", space}, {"candidate", judgement.candidate}};
    if (last != judgement.candidate) json["to"] = last;
    json["stage"] = word(judgement.stage);
    json["holds"] = judgement.holds;
    if (judgement.stage == Stage::choice) return json;
    json["limit"] = judgement.limit;
    json["part"] = json_of(judgement.part);
    json["ratio"] = judgement.ratio;
    return json;
}

// A word that names nothing throws, as a missing key does: the line is none.

PartKind kind_of(const std::string& word) {
    constexpr auto last = static_cast<int>(PartKind::plug_in);
    for (int kind = 0; kind <= last; ++kind) {
        if (model::kind_word(static_cast<PartKind>(kind)) == word) return static_cast<PartKind>(kind);
    }
    throw std::invalid_argument(word);
}

PartPiece piece_of(int number) {
    if (number < 0 || number > static_cast<int>(PartPiece::not_described)) throw std::invalid_argument("piece");
    return static_cast<PartPiece>(number);
}

PartId part_of(const Json& json) {
    PartId part{kind_of(json.at("kind")), json.at("id")};
    if (json.contains("piece")) part.piece = piece_of(json["piece"]);
    if (json.contains("at")) {
        part.at_kind = kind_of(json["at"].at("kind"));
        part.at_id = json["at"].at("id");
    }
    return part;
}

Stage stage_of(const std::string& name) {
    for (const Stage stage : stages) {
        if (word(stage) == name) return stage;
    }
    throw std::invalid_argument(name);
}

Candidate number_of(const Json& json) {
    if (!json.is_number_unsigned()) throw std::invalid_argument("number");
    return json.get<Candidate>();
}

Line line_of(const Json& json) {
    Line line;
    Judgement& judgement = line.judgement;
    line.space = json.at("space");
    judgement.candidate = number_of(json.at("candidate"));
    judgement.stage = stage_of(json.at("stage"));
    judgement.holds = json.at("holds");
    line.last = json.contains("to") ? number_of(json["to"]) : judgement.candidate;
    if (judgement.stage == Stage::choice) return line;
    judgement.limit = json.at("limit");
    judgement.part = part_of(json.at("part"));
    const Json& ratio = json.at("ratio");
    judgement.ratio = ratio.is_null() ? std::numeric_limits<double>::infinity() : ratio.get<double>();
    return line;
}

}  // namespace

std::string short_name(const std::string& fingerprint) { return fingerprint.substr(0, 16); }

std::string lines_of(const std::vector<Judgement>& judgements, const std::string& space) {
    std::string text;
    for (std::size_t first = 0; first < judgements.size();) {
        std::size_t next = first + 1;
        while (judgements[first].stage == Stage::choice && next < judgements.size() &&
               judgements[next].stage == Stage::choice &&
               judgements[next].candidate == judgements[next - 1].candidate + 1)
            ++next;
        text += json_of(judgements[first], judgements[next - 1].candidate, space).dump() + "\n";
        first = next;
    }
    return text;
}

std::optional<Line> read_line(std::string_view text) {
    try {
        return line_of(Json::parse(text));
    } catch (const Json::exception&) {
        return std::nullopt;
    } catch (const std::invalid_argument&) {
        return std::nullopt;
    }
}

}  // namespace toehold::search
