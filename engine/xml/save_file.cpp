#include "xml/detail_file.h"
#include "xml/text_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <system_error>

namespace toehold::xml {
namespace {

/// The stage that failed, and why. A full disk may show only when the data are flushed or the file is closed, so each
/// of these is asked.
struct Failure {
    std::string stage;
    int error = 0;
};

bool write_all(int descriptor, std::string_view text) {
    while (!text.empty()) {
        const ssize_t count = ::write(descriptor, text.data(), text.size());
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return false;
        text.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

std::optional<Failure> write_and_close(int descriptor, std::string_view text) {
    std::optional<Failure> failure;
    if (!write_all(descriptor, text)) {
        failure = Failure{"cannot be written", errno};
    } else if (::fsync(descriptor) != 0) {
        failure = Failure{"cannot be brought to the disk", errno};
    }
    if (::close(descriptor) != 0 && !failure) failure = Failure{"cannot be closed", errno};
    return failure;
}

model::Problem refused(const std::filesystem::path& file, const Failure& failure) {
    return file_problem(file, failure.stage + ": " + std::generic_category().message(failure.error));
}

/// A link is followed, so that saving changes the file it points to and not the link.
std::filesystem::path target_of(const std::filesystem::path& file) {
    std::error_code ignored;
    const std::filesystem::path target = std::filesystem::canonical(file, ignored);
    return ignored ? file : target;
}

/// A name no other save of this or another program uses at the same time.
std::filesystem::path sibling_of(const std::filesystem::path& target) {
    static std::atomic<unsigned> saves{0};
    std::filesystem::path sibling = target;
    sibling += "." + std::to_string(::getpid()) + "-" + std::to_string(++saves) + ".part";
    return sibling;
}

}  // namespace

std::optional<model::Problem> save_atomically(const std::filesystem::path& file, std::string_view text) {
    const std::filesystem::path target = target_of(file);
    struct stat status {};
    const bool exists = ::stat(target.c_str(), &status) == 0;
    if (exists && !S_ISREG(status.st_mode)) {
        return file_problem(file, "cannot be replaced: it is not a regular file");
    }
    const std::filesystem::path sibling = sibling_of(target);
    const int descriptor = ::open(sibling.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (descriptor < 0) return refused(file, {"cannot be saved in its folder", errno});
    std::optional<Failure> failure;
    // A new file keeps the rights just given; a replaced one passes on its own.
    if (exists && ::fchmod(descriptor, status.st_mode & 07777U) != 0) {
        failure = Failure{"cannot be given its rights", errno};
    }
    const std::optional<Failure> written = write_and_close(descriptor, text);
    if (!failure) failure = written;
    if (!failure && ::rename(sibling.c_str(), target.c_str()) != 0) failure = Failure{"cannot be replaced", errno};
    if (!failure) return std::nullopt;
    ::unlink(sibling.c_str());
    return refused(file, *failure);
}

}  // namespace toehold::xml
