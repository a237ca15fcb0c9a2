// SPDX-License-Identifier: GPL-3.0-or-later
// A job card at a bench: one step fills the screen. Every screen is built from this.
#pragma once

#include "repair/repair.h"
#include "bench/bench.h"
#include "theme/theme.h"
#include "touch/answer_bar.h"
#include "touch/card.h"
#include "touch/fit_label.h"
#include "words/words.h"

#include <QBoxLayout>
#include <QVariantMap>
#include <QWidget>

namespace strandbench {

class Instruments;
struct Settings;

/// What every screen is handed: nothing is reached for. All outlive the screen.
struct Surroundings {
    const Theme& theme;
    const Words& words;
    const Bench& bench;
    const Settings& settings;
    bool upright;                       ///< the glass is taller than wide
    Instruments* instruments = nullptr; ///< of the bench; null: none can be connected
};

/// A step that is looked at without being the next one. Back only looks; nothing is undone by it.
struct Look {
    enum class At { Question, Plan, Step } at = At::Plan;
    Question question = Question::Substrate;
    int index = 0; ///< of a prepare, finish or hand-over step
    Stage stage = Stage::Prepare;
    bool operator==(const Look&) const = default;
};

class Screen : public QWidget {
    Q_OBJECT
public:
    Screen(const Surroundings& around, const QString& name, QWidget* parent = nullptr);

    /// Called every second, and once before the first paint: clocks and ages.
    virtual void tick() {}
    /// Says what went wrong, where it happened: a red bar in the place of the sentence. Empty takes it away.
    void showTrouble(const QString& headline, const QString& whatToDo);
    /// The same of what the log refuses.
    void showTrouble(const LogFailure& failure);
    [[nodiscard]] QString troubleShown() const;
    /// Taps the way on, where there is one and it is open.
    void tapWayOn();
    /// Takes what a scanner read, where the screen has a use for it; false where it has none.
    virtual bool scanned(const QString& /*text*/) { return false; }
    /// What was entered and is not recorded yet; kept by the window while another repair is looked at, within the
    /// session, and handed back to the same screen. Empty: nothing was entered.
    [[nodiscard]] virtual QVariantMap draft() const { return {}; }
    virtual void setDraft(const QVariantMap& /*draft*/) {}
    /// While an act is being written the answers wait.
    virtual void setWriting(bool writing);

Q_SIGNALS:
    void acts(const std::vector<strandbench::Payload>& payloads); ///< one tap, one or more acts, in order
    void backTapped();
    void stopTapped();
    void homeWanted();

protected:
    [[nodiscard]] const Surroundings& around() const { return m_around; }
    [[nodiscard]] const Theme& theme() const { return m_around.theme; }
    [[nodiscard]] const Words& words() const { return m_around.words; }

    /// The usual frame: context line, sentence, content, trouble bar, the three answers. Content goes into
    /// content(), which runs across on a wide glass and down on an upright one.
    void buildFrame(const QString& context, const QString& sentence);
    /// The red bar of showTrouble(), hidden; a screen without the usual frame puts it into its own layout.
    QWidget* makeTrouble();
    void setSentence(const QString& sentence);
    void setContext(const QString& context);
    [[nodiscard]] QBoxLayout* content() const { return m_content; }
    [[nodiscard]] AnswerBar* answers() const { return m_answers; }
    [[nodiscard]] FitLabel* sentence() const { return m_sentence; }
    /// A text of the screen, named for the tests.
    FitLabel* label(const QString& name, TextRole role, const QString& text = {}, Role ink = Role::Ink,
                    bool bold = false);
    /// A sheet that things stand on, named for the tests.
    Card* card(const QString& name);
    [[nodiscard]] int px(double mm) const { return m_around.theme.px(mm); }

private:
    Surroundings m_around;
    FitLabel* m_context = nullptr;
    FitLabel* m_sentence = nullptr;
    QBoxLayout* m_content = nullptr;
    QWidget* m_trouble = nullptr;
    FitLabel* m_troubleText = nullptr;
    AnswerBar* m_answers = nullptr;
};

/// "Job 4421 · skirt panel, right rear · SMC"
[[nodiscard]] QString contextOf(const Repair& repair, const Words& words);

} // namespace strandbench
