#pragma once
// The way of news from threads beside the window to one of its parts, which may have gone by then.
#include <wx/app.h>

#include <functional>
#include <memory>
#include <utility>

namespace toehold::window {

/// Has `hear(part, news)` called on the window's own thread, as long as somebody holds `part`.
template <class News, class Part, class Hear>
[[nodiscard]] std::function<void(News)> delivery(const std::shared_ptr<Part*>& part, Hear hear) {
    return [waiting = std::weak_ptr<Part*>(part), hear = std::move(hear)](const News& news) {
        wxTheApp->CallAfter([waiting, hear, news] {
            if (const auto still = waiting.lock()) hear(**still, news);
        });
    };
}

}  // namespace toehold::window
