#pragma once
// The detail of a chart's point: its plan, what the chart says of it, and whether to take it.
#include "catalog/catalog.h"
#include "format/phrase.h"
#include "model/base_detail.h"
#include "window/theme/theme.h"

#include <wx/panel.h>

#include <functional>
#include <optional>
#include <string>

class wxBoxSizer;
class wxButton;
class wxStaticText;

namespace toehold::window {

class ScenePane;

class PreviewCard : public wxPanel {
  public:
    /// `take` is told the detail previewed; the catalog outlives the card.
    PreviewCard(wxWindow* parent, const catalog::Catalog& catalog, std::function<void(const model::BaseDetail&)> take);

    /// `words`: what the chart says of it; `refusal`: why there is no such detail.
    void show(std::optional<model::BaseDetail> detail, const wxString& words, const wxString& refusal,
              const format::Locale& locale);
    void take();  ///< what is previewed, if anything is
    void drop();
    /// The plan below the words, or beside them.
    void stand(bool below);
    void apply_theme(const Theme& theme);

  private:
    const catalog::Catalog& catalog_;
    std::function<void(const model::BaseDetail&)> take_;
    std::optional<model::BaseDetail> detail_;
    wxBoxSizer* sides_ = nullptr;
    wxStaticText* title_ = nullptr;
    wxStaticText* words_ = nullptr;
    ScenePane* plan_ = nullptr;
    wxButton* press_ = nullptr;
};

}  // namespace toehold::window
