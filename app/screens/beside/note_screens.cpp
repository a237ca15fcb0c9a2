// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/beside/note_screens.h"

#include "screens/frame/choice_screen.h"
#include "screens/frame/scan_text.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"
#include "words/notes.h"

#include <QCoreApplication>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr std::size_t rowsShown = 2;
constexpr std::size_t ownWordsAt = 4; ///< the last tile of the first page
constexpr int longestNote = 80;       ///< characters: what a person still reads on the glass

/// The context of this file's words.
struct Says {
    Q_DECLARE_TR_FUNCTIONS(NotesScreen)
};

} // namespace

QString accentsOf(const QLocale& locale)
{
    switch (locale.language()) {
    case QLocale::German:
        return u"ÄÖÜß"_s;
    case QLocale::French:
        return u"ÉÈÊËÀÂÇÎÏÔÙÛŒ"_s;
    case QLocale::Spanish:
        return u"ÁÉÍÓÚÜÑ"_s;
    default:
        return {};
    }
}

Screen* makeNotesScreen(const Surroundings& around, const Repair& repair, const std::function<void(const Noted&)>& keep,
                        const std::function<void()>& ownWords, const std::function<void()>& done, QWidget* parent)
{
    ChoiceScreen::Spec spec;
    spec.name = u"screen_notes"_s;
    spec.context = contextOf(repair, around.words);
    spec.sentence = Says::tr("What is to be noted?");
    spec.wayOn = Says::tr("To the present step");
    spec.moreTitle = Says::tr("More notes");
    for (const QString& code : commonNotes()) {
        const Noted note{code, {}};
        spec.tiles.push_back({u"note_"_s + code, noteText(note), {}, {}, false, false, [keep, note] { keep(note); }});
    }
    spec.tiles.insert(spec.tiles.begin() + ownWordsAt,
                      {u"own_words"_s, Says::tr("In your own words"), {}, {}, false, false, ownWords});
    auto* screen = new ChoiceScreen(around, std::move(spec), parent);
    QObject::connect(screen, &ChoiceScreen::wayOnTapped, screen, done);
    screen->addBeside(new NoteList(around, {repair.notes.rbegin(), repair.notes.rend()}, screen), 1);
    return screen;
}

NoteList::NoteList(const Surroundings& around, std::vector<Kept<Noted>> notes, QWidget* parent)
    : QWidget(parent), m_around(around), m_notes(std::move(notes))
{
    const Theme& theme = around.theme;
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(theme.px(sizes::gap));
    auto* box = new Card(theme, this);
    box->setObjectName(u"note_card"_s);
    auto* texts = new FitColumn;
    texts->setContentsMargins(theme.px(3), theme.px(1.5), theme.px(3), theme.px(1.5));
    box->setLayout(texts);
    m_none = new FitLabel(theme, u"no_notes"_s, TextRole::Body, box);
    m_none->setText(Says::tr("No notes yet."));
    texts->addText(m_none);
    for (std::size_t i = 0; i < rowsShown; ++i) {
        auto* what = new FitLabel(theme, u"note_%1"_s.arg(i), TextRole::Body, box);
        what->setBold(true);
        auto* who = new FitLabel(theme, u"note_%1_by"_s.arg(i), TextRole::Small, box);
        who->setRole(Role::MutedInk);
        texts->addRow({what, who}, nullptr, 0, theme.px(2));
        m_rows.emplace_back(what, who);
    }
    column->addWidget(box, 1);
    m_older = new TapButton(theme, u"older_notes"_s, TapButton::Kind::Quiet, this);
    m_older->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    connect(m_older, &TapButton::clicked, this,
            [this] { showFrom(m_first + rowsShown < m_notes.size() ? m_first + rowsShown : 0); });
    column->addWidget(m_older);
    showFrom(0);
}

void NoteList::showFrom(std::size_t first)
{
    m_first = first;
    for (std::size_t i = 0; i < rowsShown; ++i) {
        const bool there = first + i < m_notes.size();
        const auto& [what, who] = m_rows[i];
        what->setVisible(there);
        who->setVisible(there);
        if (!there)
            continue;
        const Kept<Noted>& note = m_notes[first + i];
        what->setText(noteText(note.what));
        who->setText(m_around.words.clockTime(note.at) + u" · "_s + note.person);
    }
    m_none->setVisible(m_notes.empty());
    m_older->setVisible(m_notes.size() > rowsShown);
    const std::size_t last = std::min(m_notes.size(), first + rowsShown);
    m_older->setTitle(last < m_notes.size() ? Says::tr("Older notes") : Says::tr("Newest notes"));
    //: notes %1 to %2 of %3
    m_older->setSecondLine(Says::tr("%1–%2 of %3").arg(first + 1).arg(last).arg(m_notes.size()));
}

NoteTextScreen::NoteTextScreen(const Surroundings& around, const Repair& repair, QWidget* parent)
    : NoteTextScreen(around,
                     {u"screen_note_text"_s, contextOf(repair, around.words), Says::tr("Write the note"),
                      Says::tr("Keep this note")},
                     parent)
{}

NoteTextScreen::NoteTextScreen(const Surroundings& around, const Spec& spec, QWidget* parent)
    : Screen(around, spec.name, parent)
{
    buildFrame(spec.context, spec.sentence);
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    m_typed = label(u"typed_note"_s, TextRole::Title);
    m_keys = new LetterKeys(theme(), around.upright ? 4 : 8, accentsOf(words().locale()), this);
    m_keys->setLongest(longestNote);
    column->addWidget(m_typed, 1);
    column->addWidget(m_keys, around.upright ? 4 : 3);
    content()->addLayout(column, 1);
    answers()->setWayOn(spec.wayOn);
    connect(m_keys, &LetterKeys::textChanged, this, &NoteTextScreen::showTyped);
    connect(m_keys, &LetterKeys::entered, this, &NoteTextScreen::give);
    connect(answers(), &AnswerBar::wayOnTapped, this, &NoteTextScreen::give);
    showTyped();
    m_keys->setFocus();
}

bool NoteTextScreen::scanned(const QString& text)
{
    if (!isShowable(text))
        showTrouble(Says::tr("The code holds a control character."), Says::tr("It is not written down."));
    else
        m_keys->type(m_keys->text().isEmpty() ? text : u' ' + text);
    return true;
}

void NoteTextScreen::showTyped()
{
    showTrouble({}, {});
    const QString text = m_keys->text();
    m_typed->setText(text.isEmpty() ? u"–"_s : text);
    if (text.isEmpty())
        m_typed->setAccessibleName(Says::tr("Nothing written yet"));
}

void NoteTextScreen::give()
{
    const QString text = m_keys->text().trimmed();
    if (text.isEmpty())
        return showTrouble(Says::tr("The note is empty."), Says::tr("Write 1 to %1 characters.").arg(longestNote));
    Q_EMIT written({{}, text});
}

void NoteTextScreen::setWriting(bool writing)
{
    Screen::setWriting(writing);
    m_keys->setEnabled(!writing);
}

} // namespace strandbench
