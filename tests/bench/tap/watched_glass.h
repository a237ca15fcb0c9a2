// SPDX-License-Identifier: GPL-3.0-or-later
// An application that notes when a touch reached it and when its window had painted.
#pragma once

#include <QApplication>

#include <chrono>
#include <functional>
#include <optional>
#include <vector>

namespace strandbench::tapbench {

/// In milliseconds: by the wall, and of the processor in the glass's own thread, where nothing else of the machine is.
struct Spent {
    double wall = 0;
    double processor = 0;
};

struct Moment {
    std::chrono::steady_clock::time_point wall;
    std::chrono::nanoseconds processor{};
    [[nodiscard]] static Moment now();
};
[[nodiscard]] Spent between(const Moment& from, const Moment& to);

/// A picture that was painted and handed over.
struct Painted {
    Moment at;
    const void* screen = nullptr; ///< that it showed
    bool writing = false;         ///< an act was on its way to the disk
};

class WatchedGlass final : public QApplication {
public:
    using QApplication::QApplication;

    /// What a picture shows; called after each.
    std::function<Painted(const Moment&)> look;
    void forget();
    /// When the first touch since then reached the window.
    [[nodiscard]] std::optional<Moment> touched() const { return m_touched; }
    [[nodiscard]] const std::vector<Painted>& painted() const { return m_painted; }
    /// Runs the loop until nothing was painted, and `busy` was false, for so long; half a minute at most.
    void rest(std::chrono::milliseconds still, const std::function<bool()>& busy);

    bool notify(QObject* receiver, QEvent* event) override;

private:
    std::optional<Moment> m_touched;
    std::vector<Painted> m_painted;
    int m_paints = 0; ///< of widgets
    int m_depth = 0;  ///< of requests to paint
};

} // namespace strandbench::tapbench
