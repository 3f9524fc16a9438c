#include "window/frame/printout.h"

#include "window/frame/application.h"
#include "window/sheet/printout_page.h"
#include "window/text.h"

#include <wx/frame.h>
#include <wx/graphics.h>
#include <wx/print.h>
#include <wx/printdlg.h>
#include <wx/translation.h>

#include <algorithm>
#include <memory>

namespace toehold::window {

namespace {

/// A preview outlives edits of the session, and shows the session as it is when a page is drawn.
class SheetPrintout : public wxPrintout {
  public:
    SheetPrintout(const wxPageSetupDialogData& page, const session::Session& session)
        : wxPrintout(text_of(session.detail().name)), page_(page), session_(session) {}

    bool HasPage(int page) override { return page == 1; }
    void GetPageInfo(int* least, int* most, int* from, int* to) override { *least = *most = *from = *to = 1; }

    bool OnPrintPage(int /*page*/) override {
        FitThisSizeToPageMargins(paper_size(), page_);
        const wxRect area = GetLogicalPageMarginsRect(page_);
        const std::unique_ptr<wxGraphicsContext> context(wxGraphicsContext::CreateFromUnknownDC(*GetDC()));
        if (!context || area.width <= 0) return false;
        auto* cairo = static_cast<cairo_t*>(context->GetNativeContext());
        paint_page(cairo,
                   {static_cast<double>(area.x), static_cast<double>(area.y), static_cast<double>(area.width),
                    static_cast<double>(area.height)},
                   units_per_mm, session_);
        return true;
    }

  private:
    static constexpr double units_per_mm = 10.0;

    /// What lies within the margins, in tenths of a millimeter.
    wxSize paper_size() {
        int width = 0, height = 0;
        GetPageSizeMM(&width, &height);
        const wxPoint low = page_.GetMarginTopLeft(), high = page_.GetMarginBottomRight();
        const auto units = [](int mm) { return std::max(1, static_cast<int>(units_per_mm * mm)); };
        return {units(width - low.x - high.x), units(height - low.y - high.y)};
    }

    wxPageSetupDialogData page_;
    const session::Session& session_;
};

}  // namespace

void set_up_page(wxWindow* parent, Application& application) {
    wxPageSetupDialogData& page = application.page();
    page.SetPrintData(application.print_data());
    wxPageSetupDialog dialog(parent, &page);
    if (dialog.ShowModal() != wxID_OK) return;
    page = dialog.GetPageSetupDialogData();
    application.print_data() = page.GetPrintData();
}

void preview(wxWindow* parent, Application& application, const session::Session& session) {
    wxPrintDialogData data(application.print_data());
    auto* shown = new wxPrintPreview(new SheetPrintout(application.page(), session),
                                     new SheetPrintout(application.page(), session), &data);
    if (!shown->IsOk()) {
        delete shown;
        application.prompts.tell(parent, _("There is no preview."), _("The printing system gave no page."));
        return;
    }
    auto* frame =
        new wxPreviewFrame(shown, parent, _("Print preview"), wxDefaultPosition, parent->FromDIP(wxSize(900, 760)));
    frame->SetName("preview");
    frame->InitializeWithModality(wxPreviewFrame_WindowModal);
    frame->Show();
}

void print(wxWindow* parent, Application& application, const session::Session& session) {
    wxPrintDialogData data(application.print_data());
    wxPrinter printer(&data);
    SheetPrintout printout(application.page(), session);
    if (printer.Print(parent, &printout, true)) {
        application.print_data() = printer.GetPrintDialogData().GetPrintData();
    } else if (wxPrinter::GetLastError() == wxPRINTER_ERROR) {
        application.prompts.tell(parent, _("The sheet was not printed."), _("The printing system refused it."));
    }
}

}  // namespace toehold::window
