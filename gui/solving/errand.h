#pragma once
// Long work that is asked for now and then: one thread that does the newest errand it was given, behind everything else
// the computer has to do. A newer errand tells the one that runs to stop.
#include <functional>
#include <memory>

namespace toehold::solving {

class Errand {
  public:
    /// Asked now and then by the work; true: nobody waits for it any more.
    using Stop = std::function<bool()>;
    using Work = std::function<void(const Stop&)>;

    Errand();
    ~Errand();  ///< waits until what runs has stopped
    Errand(const Errand&) = delete;
    Errand& operator=(const Errand&) = delete;

    void begin(Work work);  ///< never waits
    void stop();            ///< never waits: what runs, or was to run, is told to stop

  private:
    struct Thread;
    std::unique_ptr<Thread> thread_;
};

}  // namespace toehold::solving
