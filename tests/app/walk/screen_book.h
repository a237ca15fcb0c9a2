// SPDX-License-Identifier: GPL-3.0-or-later
// What a test has seen of the screens: each is held to the rules of look and touch, kept as a picture with all that is
// to be known of its layout where a folder is named, and its keys are compared with where they were accepted last.
//
//   LOOK_PICTURES=folder     keeps "<language>_<theme>/<test>/NN_screen.png" and ".json" there
//   LAYOUT_ACCEPTED=folder   where the accepted layouts are, in the place of those in the tree
//   LAYOUT_ACCEPT=1          writes them anew
#pragma once

#include "layout_facts.h"

#include "bench/settings.h"
#include "touch_rules/glass.h"
#include "touch_rules/pseudo_language.h"
#include "touch_rules/rule_check.h"

#include <memory>

namespace strandbench::test {

/// How the program stands on one glass.
struct Look {
    rules::Glass glass;
    QString language;
    DayNight dayNight = DayNight::Day;
    Hand hand = Hand::Right;
    UnitSystem units = UnitSystem::Metric;
};
/// "1280x800_de_night".
[[nodiscard]] std::string nameOf(const Look& look);
void PrintTo(const Look& look, std::ostream* out);

/// The pseudo-language is spoken as long as this lives; other languages the program speaks by itself.
class Spoken {
public:
    explicit Spoken(const QString& language);
    ~Spoken();
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;

private:
    std::unique_ptr<rules::PseudoLanguage> m_pseudo;
};

class ScreenBook {
public:
    explicit ScreenBook(Look look) : m_look(std::move(look)) {}

    /// Fails the test with every breach of the screen as it stands.
    void take(QWidget& window, const Theme& theme, const QString& screen, rules::RuleSet set);
    /// The end of a test: fails it with each key that does not stand where it was accepted. Layouts are kept for
    /// English on the lowest and the narrowest glass: what moves there moves everywhere.
    void close();

    /// Whether this look's layouts are compared.
    [[nodiscard]] bool compares() const;

private:
    void keep(QWidget& window, const Theme& theme, const QString& screen);

    Look m_look;
    Layouts m_layouts;
    int m_number = 0;
};

} // namespace strandbench::test
