#pragma once
// Hardware nobody has chosen yet: the least allowable values its evaluation report must give for the detail to be as
// drawn. ASD, in lb.
#include "job/design.h"
#include "model/connection.h"

namespace toehold::job {

/// On both sides of a block's end.
[[nodiscard]] model::ReportedConnector at_block_end(const Design& design);
/// The three that hold each joist: by its hanger at the ledger, on the beam, and to the rim. `overhang` is the part of
/// the joists past the beam over the part between ledger and beam, >= 0.
[[nodiscard]] model::ReportedConnector at_ledger(const Design& design, double reaction_lb);
[[nodiscard]] model::ReportedConnector on_beam(const Design& design, double spacing_in, double overhang);
[[nodiscard]] model::ReportedConnector at_rim(const Design& design, double spacing_in);

/// On the beam where a post is bolted to the rim: the same, and against being drawn along the joist.
[[nodiscard]] model::ReportedConnector on_beam_behind_rim(const Design& design, double spacing_in);
/// To a rim that a post is bolted to, which rolls: as much along the joist as the post's upper bolts draw.
[[nodiscard]] model::ReportedConnector at_rolling_rim(const Design& design, double spacing_in);

/// `up 1,600 lb, down 1,600 lb, across 700 lb`.
[[nodiscard]] format::Phrase words_of(const model::ReportedConnector& hardware);

}  // namespace toehold::job
