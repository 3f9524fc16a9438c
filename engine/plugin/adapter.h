#pragma once
// A plug-in's check as one of the engine's own.
#include "checks/registry.h"
#include "plugin/abi_1.h"
#include "plugin/toehold_plugin.h"

namespace toehold::plugin {

/// The engine's check that calls the plug-in's. Whatever goes wrong inside (a refused result, a failure, an exception)
/// becomes one result of `missing_evidence` that says so: a plug-in can leave a review incomplete, never end it.
/// `check` and the texts it points to are copied, its function must stay loaded.
[[nodiscard]] checks::Check adapt(const toehold_check& check);
[[nodiscard]] checks::Check adapt(const abi_1::Check& check);

/// The text, no longer than 2000 bytes, with bytes that are not UTF-8 replaced; empty for a null pointer.
[[nodiscard]] std::string copied_text(const char* text);

}  // namespace toehold::plugin
