// SPDX-License-Identifier: GPL-3.0-or-later
// Taking in: the job number by large keys, then the panel by tile. Nothing is recorded before the last tap.
#pragma once

#include "screens/screen.h"
#include "touch/key_pad.h"

namespace strandbench {

class JobNumberScreen final : public Screen {
    Q_OBJECT
public:
    JobNumberScreen(const Surroundings& around, const QString& number, QWidget* parent = nullptr);

    [[nodiscard]] QVariantMap draft() const override;
    void setDraft(const QVariantMap& draft) override;

Q_SIGNALS:
    void numberGiven(const QString& number);

private:
    void showNumber(const QString& number);
    void give();

    KeyPad* m_keys = nullptr;
    FitLabel* m_number = nullptr;
};

/// The panels of a bus as the workshop calls them, in the person's language: one tile each.
[[nodiscard]] QStringList panelNames();

/// The screen of panels: a tap takes the panel in. Given the person's name for the context.
[[nodiscard]] Screen* makePanelScreen(const Surroundings& around, const QString& job,
                                      std::function<void(const QString&)> taken, QWidget* parent);

/// The screen of people: a tap says who is at the bench.
[[nodiscard]] Screen* makePersonScreen(const Surroundings& around, std::function<void(const QString&)> chosen,
                                       QWidget* parent);

/// Who is offered: the bench's own people, or the program's tiles on a new bench.
[[nodiscard]] QStringList peopleOf(const Settings& settings);

} // namespace strandbench
