// SPDX-License-Identifier: GPL-3.0-or-later
// Taking in: the job number by large keys, then the panel by tile. Nothing is recorded before the last tap.
#pragma once

#include "screens/frame/screen.h"
#include "touch/key_pad.h"

namespace strandbench {

class JobNumberScreen final : public Screen {
    Q_OBJECT
public:
    JobNumberScreen(const Surroundings& around, const QString& number, QWidget* parent = nullptr);

    /// A scanned number may have letters, as the job card's bar code has them.
    bool scanned(const QString& text) override;
    [[nodiscard]] QVariantMap draft() const override;
    void setDraft(const QVariantMap& draft) override;

Q_SIGNALS:
    void numberGiven(const QString& number);

private:
    void showNumber(const QString& number);
    void give();

    QString m_scanned; ///< a number that the keys cannot write
    KeyPad* m_keys = nullptr;
    FitLabel* m_number = nullptr;
};

/// The panels of a bus as the workshop calls them, in the person's language: one tile each.
[[nodiscard]] QStringList panelNames();

/// How many panels taken in lately stand in front of the rest.
inline constexpr int mostRecentPanels = 6;

/// The screen of panels, those taken in lately first: a tap takes the panel in, and so does a scan of its name.
[[nodiscard]] Screen* makePanelScreen(const Surroundings& around, const QString& job,
                                      std::function<void(const QString&)> taken, QWidget* parent);

/// The screen of people: a tap says who is at the bench.
[[nodiscard]] Screen* makePersonScreen(const Surroundings& around, std::function<void(const QString&)> chosen,
                                       QWidget* parent);

/// Who is offered: the bench's own people, or the program's tiles on a new bench.
[[nodiscard]] QStringList peopleOf(const Settings& settings);

} // namespace strandbench
