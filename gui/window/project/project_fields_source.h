#pragma once
// The fields of a project as a panel shows them.
#include "session/project_session.h"
#include "window/panels/fields/field_source.h"

namespace toehold::window {

/// The session outlives the source.
[[nodiscard]] FieldSource project_fields_source(session::ProjectSession& session,
                                                std::function<format::Locale()> locale);

}  // namespace toehold::window
