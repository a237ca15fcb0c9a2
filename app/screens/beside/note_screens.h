// SPDX-License-Identifier: GPL-3.0-or-later
// Notes of a repair: the common ones by a tap, one's own by large keys, and those taken so far.
#pragma once

#include "screens/frame/screen.h"
#include "touch/letter_keys.h"

namespace strandbench {

/// Letters beyond A to Z by language (ISO 639-1), as its keyboards have them.
[[nodiscard]] QString accentsOf(const QLocale& locale);

/// Common notes as tiles, and what is noted already. ownWords: to the keys; done: to the present step.
[[nodiscard]] Screen* makeNotesScreen(const Surroundings& around, const Repair& repair,
                                      const std::function<void(const Noted&)>& keep,
                                      const std::function<void()>& ownWords, const std::function<void()>& done,
                                      QWidget* parent);

/// The notes taken so far, newest first, two at a time.
class NoteList final : public QWidget {
    Q_OBJECT
public:
    NoteList(const Surroundings& around, std::vector<Kept<Noted>> notes, QWidget* parent);

private:
    void showFrom(std::size_t first);

    Surroundings m_around;
    std::vector<Kept<Noted>> m_notes; ///< newest first
    std::size_t m_first = 0;
    std::vector<std::pair<FitLabel*, FitLabel*>> m_rows; ///< what, and when and who
    FitLabel* m_none = nullptr;
    TapButton* m_older = nullptr;
};

/// A note in one's own words: by the large keys, a keyboard or a scanner.
class NoteTextScreen final : public Screen {
    Q_OBJECT
public:
    struct Spec {
        QString name;
        QString context;
        QString sentence;
        QString wayOn;
    };
    NoteTextScreen(const Surroundings& around, const Spec& spec, QWidget* parent = nullptr);
    NoteTextScreen(const Surroundings& around, const Repair& repair, QWidget* parent = nullptr);

    bool scanned(const QString& text) override;
    void setWriting(bool writing) override;

Q_SIGNALS:
    void written(const strandbench::Noted& note);

private:
    void give();
    void showTyped();

    FitLabel* m_typed = nullptr;
    LetterKeys* m_keys = nullptr;
};

} // namespace strandbench
