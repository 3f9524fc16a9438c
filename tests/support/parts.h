#pragma once
// Parts as tests name them: `parts::anchor("A")`, `parts::plate`.
#include "model/part.h"

#include <string>
#include <utility>

namespace toehold::test::parts {

using model::PartId;
using model::PartKind;

[[nodiscard]] inline PartId anchor(std::string id) { return model::anchor_part(std::move(id)); }
[[nodiscard]] inline PartId block(std::string id) { return {PartKind::block, std::move(id)}; }
[[nodiscard]] inline PartId joist(std::string id) { return {PartKind::joist, std::move(id)}; }
[[nodiscard]] inline PartId rim(std::string id) { return {PartKind::rim, std::move(id)}; }
[[nodiscard]] inline PartId ledger(std::string id) { return {PartKind::ledger, std::move(id)}; }
[[nodiscard]] inline PartId beam(std::string id) { return {PartKind::beam, std::move(id)}; }
/// By their numbers, from 1.
[[nodiscard]] inline PartId shim(std::size_t number) { return model::shim_part(number - 1); }
[[nodiscard]] inline PartId corner(std::size_t number) { return model::corner_part(number - 1); }

inline const PartId plate{PartKind::plate}, post{PartKind::post}, weld{PartKind::weld}, guard{PartKind::guard},
    push{PartKind::push}, decking{PartKind::decking};

}  // namespace toehold::test::parts
