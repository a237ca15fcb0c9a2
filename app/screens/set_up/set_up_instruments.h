// SPDX-License-Identifier: GPL-3.0-or-later
// Set-up: scale and thermo-hygrometer, a page each. What comes in is shown live, with what is read from it.
#pragma once

#include "gear/instruments.h"
#include "screens/set_up/set_up_screen.h"
#include "touch/letter_keys.h"

namespace strandbench {

/// The details of the instruments' pages, of which each asks for one thing.
namespace instrument_details {
inline const QString port = QStringLiteral("port");
inline const QString speed = QStringLiteral("speed");
inline const QString pattern = QStringLiteral("pattern");
inline const QString portText = QStringLiteral("port_text");
inline const QString patternText = QStringLiteral("pattern_text");
} // namespace instrument_details

/// What the pages have in common: page 0 is the scale's, page 1 the thermo-hygrometer's.
class SetUpInstrumentBase : public SetUpScreen {
    Q_OBJECT
protected:
    SetUpInstrumentBase(const Surroundings& around, const QString& name, const SetUpPlace& place, QWidget* parent);
    [[nodiscard]] InstrumentKind kind() const { return m_kind; }
    [[nodiscard]] const InstrumentSetting& setting() const;
    [[nodiscard]] Settings with(const InstrumentSetting& changed) const;
    [[nodiscard]] QString nameOfKind() const;
    /// Null where the program was started without instruments.
    [[nodiscard]] InstrumentFeed* feed() const;
    [[nodiscard]] const SetUpPlace& at() const { return m_at; }
    void buildDetail(const QString& sentence);
    /// Asks for a thing of this instrument.
    TapButton* wayTo(const QString& name, const QString& title, const QString& second, const QString& detail);

private:
    SetUpPlace m_at;
    InstrumentKind m_kind;
};

class SetUpInstrumentsScreen final : public SetUpInstrumentBase {
    Q_OBJECT
public:
    SetUpInstrumentsScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);
    void tick() override { show(); }

private:
    [[nodiscard]] Card* liveCard();
    void show();

    FitLabel* m_headline = nullptr;
    FitLabel* m_advice = nullptr;
    FitLabel* m_line = nullptr;
};

/// The ports that are there now.
class SetUpPortScreen final : public SetUpInstrumentBase {
    Q_OBJECT
public:
    SetUpPortScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);
};

class SetUpSpeedScreen final : public SetUpInstrumentBase {
    Q_OBJECT
public:
    SetUpSpeedScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);
};

/// Ready patterns, each with what it reads from the newest line.
class SetUpPatternScreen final : public SetUpInstrumentBase {
    Q_OBJECT
public:
    SetUpPatternScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);
    void tick() override { show(); }

private:
    void show();

    FitLabel* m_line = nullptr;
    std::vector<std::pair<QString, TapButton*>> m_ready;
};

/// The path of a port or a pattern by the large keys or a keyboard.
class SetUpInstrumentTextScreen final : public SetUpInstrumentBase {
    Q_OBJECT
public:
    SetUpInstrumentTextScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent = nullptr);
    void tick() override { showTyped(); }

private:
    [[nodiscard]] bool isPattern() const;
    void showTyped();
    void give();

    FitLabel* m_typed = nullptr;
    FitLabel* m_reads = nullptr;
    LetterKeys* m_keys = nullptr;
};

[[nodiscard]] SetUpScreen* makeSetUpInstruments(const Surroundings& around, const SetUpPlace& place, QWidget* parent);

} // namespace strandbench
