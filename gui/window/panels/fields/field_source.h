#pragma once
// Whose fields a panel shows, and how one is set: a session's detail, or a project.
#include "editing/fields.h"
#include "format/phrase.h"

#include <functional>
#include <string>
#include <vector>

namespace toehold::session {
class Session;
}

namespace toehold::window {

struct FieldSource {
    std::function<std::vector<editing::Field>()> fields;
    /// What stands against that text; empty: it would be taken. Changes nothing.
    std::function<format::Phrase(const std::string& path, const std::string& text)> refusal;
    /// Takes it as one step; else the refusal.
    std::function<format::Phrase(const std::string& path, const std::string& text)> set;
    std::function<std::vector<model::PartId>()> selection;
    std::function<format::Locale()> locale;
    std::function<void(const format::Phrase&)> say;
};

/// The session outlives the source.
[[nodiscard]] FieldSource field_source(session::Session& session);

}  // namespace toehold::window
