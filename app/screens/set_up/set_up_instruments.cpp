// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/set_up_instruments.h"

#include "screens/set_up/instrument_words.h"
#include "theme/sizes.h"
#include "touch/fit_column.h"

#include <QGridLayout>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

namespace details = instrument_details;

constexpr int portsPerPage = 4;
constexpr int longestPort = 60;
constexpr double captionWidth = 21; // mm
constexpr TextSize keyTitle{5.4, 3.6};

/// What a pattern reads from a line, as a person says it.
QString readFrom(const QString& line, InstrumentKind kind, const QString& pattern, const Words& words)
{
    const auto made = patternFor(kind, pattern);
    if (!made)
        return words.fault(made.error().front());
    if (line.isEmpty())
        return SetUpInstrumentsScreen::tr("no line has come yet");
    const auto read = made->read(line.toLatin1());
    return read ? SetUpInstrumentsScreen::tr("reads %1").arg(instruments::reading(*read, words))
                : SetUpInstrumentsScreen::tr("does not fit the line");
}

} // namespace

SetUpInstrumentBase::SetUpInstrumentBase(const Surroundings& around, const QString& name, const SetUpPlace& place,
                                         QWidget* parent)
    : SetUpScreen(around, name, place, parent),
      m_at(place),
      m_kind(place.page % 2 == 0 ? InstrumentKind::Scale : InstrumentKind::Climate)
{}

const InstrumentSetting& SetUpInstrumentBase::setting() const
{
    return m_kind == InstrumentKind::Scale ? around().settings.scale : around().settings.climate;
}

Settings SetUpInstrumentBase::with(const InstrumentSetting& changed) const
{
    Settings wanted = around().settings;
    (m_kind == InstrumentKind::Scale ? wanted.scale : wanted.climate) = changed;
    return wanted;
}

QString SetUpInstrumentBase::nameOfKind() const
{
    return m_kind == InstrumentKind::Scale ? tr("Scale") : tr("Thermo-hygrometer");
}

InstrumentFeed* SetUpInstrumentBase::feed() const
{
    return around().instruments ? &around().instruments->of(m_kind) : nullptr;
}

void SetUpInstrumentBase::buildDetail(const QString& sentence)
{
    buildFrame(tr("Bench set-up") + u" · "_s + nameOfKind(), sentence);
    answers()->stop()->hide();
    answers()->setWayOn({});
    backTo({m_at.group, m_at.page});
}

TapButton* SetUpInstrumentBase::wayTo(const QString& name, const QString& title, const QString& second,
                                      const QString& detail)
{
    TapButton* made = key(name, TapButton::Kind::Plain, title, second);
    made->setTitleSize(keyTitle);
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    connect(made, &TapButton::clicked, this, [this, detail] { Q_EMIT placeWanted({m_at.group, m_at.page, detail}); });
    return made;
}

SetUpInstrumentsScreen::SetUpInstrumentsScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpInstrumentBase(around, u"screen_set_up_instruments"_s, place, parent)
{
    const bool scale = kind() == InstrumentKind::Scale;
    QWidget* holder = buildPage(nameOfKind(), scale ? tr("Connect the scale") : tr("Connect the thermo-hygrometer"), 2);
    auto* row = new QBoxLayout(around.upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(sizes::gap));
    auto* keys = new QVBoxLayout;
    keys->setSpacing(px(sizes::gap));
    const InstrumentSetting& now = setting();
    const QString port = now.port.isEmpty() ? tr("none: all is keyed in") : instruments::breakable(now.port);
    const QString pattern = now.pattern.isEmpty() ? tr("not chosen yet") : instruments::breakable(now.pattern);
    keys->addWidget(wayTo(u"instrument_port"_s, tr("Port"), port, details::port), 1);
    keys->addWidget(
        wayTo(u"instrument_speed"_s, tr("Speed"), u"%1 · %2"_s.arg(now.baud).arg(now.frame), details::speed), 1);
    keys->addWidget(wayTo(u"instrument_pattern"_s, tr("Pattern of a line"), pattern, details::pattern), 1);
    row->addLayout(keys, 1);
    auto* side = new QVBoxLayout;
    side->setSpacing(px(sizes::gap));
    side->addWidget(liveCard(), 1);
    if (scale) {
        TapButton* bead = key(u"calibrate_bead"_s, TapButton::Kind::Plain, tr("Calibrate the bead"));
        bead->setTitleSize(keyTitle);
        connect(bead, &TapButton::clicked, this, &SetUpScreen::beadWanted);
        side->addWidget(bead);
    }
    row->addLayout(side, 1);
    if (feed())
        connect(feed(), &InstrumentFeed::changed, this, &SetUpInstrumentsScreen::show);
    show();
}

Card* SetUpInstrumentsScreen::liveCard()
{
    Card* box = card(u"instrument_card"_s);
    auto* texts = new FitColumn;
    box->setLayout(texts);
    texts->setContentsMargins(px(3), px(1.5), px(3), px(1.5));
    m_headline = label(u"instrument_says"_s, TextRole::Body, {}, Role::Ink, true);
    m_advice = label(u"instrument_advice"_s, TextRole::Small);
    m_line = label(u"instrument_line"_s, TextRole::Small, {}, Role::MutedInk);
    for (FitLabel* each : {m_headline, m_advice, m_line})
        texts->addText(each);
    return box;
}

void SetUpInstrumentsScreen::show()
{
    const InstrumentView view = feed() ? feed()->view() : InstrumentView{};
    m_headline->setText(instruments::headline(view, setting(), words()));
    m_headline->setRole(instruments::isTrouble(view) ? Role::Stop : Role::Ink);
    m_advice->setText(instruments::advice(view, words()));
    m_line->setText(view.line.isEmpty() ? tr("No line has come yet.")
                                        : tr("Last line: %1").arg(instruments::breakable(view.line)));
}

SetUpPortScreen::SetUpPortScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpInstrumentBase(around, u"screen_set_up_port"_s, place, parent)
{
    buildDetail(tr("Where is it plugged in?"));
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    content()->addLayout(grid, 1);
    const int columns = around.upright ? 1 : 2;
    int count = 0;
    const auto put = [&](TapButton* tile) {
        tile->setTitleSize(keyTitle);
        tile->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        grid->addWidget(tile, count / columns, count % columns);
        grid->setRowStretch(count / columns, 1);
        grid->setColumnStretch(count % columns, 1);
        ++count;
    };
    InstrumentSetting wanted = setting();
    wanted.port.clear();
    put(choice(u"port_none"_s, tr("None: all is keyed in"), setting().port.isEmpty(), with(wanted)));
    put(wayTo(u"port_write"_s, tr("Write its path"), setting().port, details::portText));
    const std::vector<SerialPortFound> found =
        around.instruments ? around.instruments->ports() : std::vector<SerialPortFound>{};
    for (std::size_t i = 0; i < found.size() && i < portsPerPage; ++i) {
        wanted.port = found[i].path;
        TapButton* tile = choice(u"port_%1"_s.arg(i), instruments::breakable(found[i].path),
                                 setting().port == found[i].path, with(wanted));
        tile->setSecondLine(found[i].says);
        put(tile);
    }
    if (found.empty())
        grid->addWidget(label(u"port_nothing"_s, TextRole::Body, tr("No serial port is found on this machine now.")),
                        (count + columns - 1) / columns, 0, 1, columns);
}

SetUpSpeedScreen::SetUpSpeedScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpInstrumentBase(around, u"screen_set_up_speed"_s, place, parent)
{
    buildDetail(tr("How fast does it send? See its manual"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    content()->addLayout(column, 1);
    QHBoxLayout* row = nullptr;
    int inRow = 0;
    const auto begin = [&](const QString& name, const QString& caption) {
        row = new QHBoxLayout;
        row->setSpacing(px(sizes::gap));
        FitLabel* text = label(name, TextRole::Small, caption, Role::MutedInk);
        text->setFixedWidth(px(captionWidth));
        row->addWidget(text);
        column->addLayout(row, 1);
        inRow = 0;
    };
    InstrumentSetting wanted = setting();
    begin(u"caption_speed"_s, tr("bit/s"));
    for (int baud : serialSpeeds()) {
        if (inRow++ == 4)
            begin(u"caption_speed_fast"_s, tr("bit/s"));
        wanted.baud = baud;
        TapButton* tile = choice(u"speed_%1"_s.arg(baud), QString::number(baud), setting().baud == baud, with(wanted));
        tile->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        row->addWidget(tile, 1);
    }
    wanted = setting();
    begin(u"caption_frame"_s, tr("Frame"));
    for (const QString& frame : serialFrames()) {
        wanted.frame = frame;
        TapButton* tile = choice(u"frame_"_s + frame, frame, setting().frame == frame, with(wanted));
        tile->setTitleSize(keyTitle);
        tile->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        row->addWidget(tile, 1);
    }
}

SetUpPatternScreen::SetUpPatternScreen(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
    : SetUpInstrumentBase(around, u"screen_set_up_pattern"_s, place, parent)
{
    buildDetail(tr("Which pattern fits its lines?"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    content()->addLayout(column, 1);
    m_line = label(u"pattern_line"_s, TextRole::Body, {}, Role::Ink, true);
    column->addWidget(m_line);
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    column->addLayout(grid, 1);
    const int columns = around.upright ? 1 : 3;
    int count = 0;
    InstrumentSetting wanted = setting();
    for (const QString& each : readyPatterns(kind())) {
        wanted.pattern = each;
        TapButton* tile =
            choice(u"pattern_%1"_s.arg(count), instruments::breakable(each), setting().pattern == each, with(wanted));
        tile->setTitleSize(keyTitle);
        tile->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        grid->addWidget(tile, count / columns, count % columns);
        grid->setRowStretch(count / columns, 1);
        grid->setColumnStretch(count % columns, 1);
        m_ready.emplace_back(each, tile);
        ++count;
    }
    const bool own = !setting().pattern.isEmpty() && !readyPatterns(kind()).contains(setting().pattern);
    grid->addWidget(wayTo(u"pattern_write"_s, tr("Write one, or change it"),
                          own ? instruments::breakable(setting().pattern) : QString(), details::patternText),
                    count / columns, count % columns);
    grid->setRowStretch(count / columns, 1);
    if (feed())
        connect(feed(), &InstrumentFeed::changed, this, &SetUpPatternScreen::show);
    show();
}

void SetUpPatternScreen::show()
{
    const QString line = feed() ? feed()->view().line : QString();
    m_line->setText(line.isEmpty() ? tr("No line has come yet.")
                                   : tr("Last line: %1").arg(instruments::breakable(line)));
    for (const auto& [pattern, tile] : m_ready)
        tile->setSecondLine(readFrom(line, kind(), pattern, words()));
}

SetUpInstrumentTextScreen::SetUpInstrumentTextScreen(const Surroundings& around, const SetUpPlace& place,
                                                     QWidget* parent)
    : SetUpInstrumentBase(around, u"screen_set_up_instrument_text"_s, place, parent)
{
    buildDetail(isPattern() ? tr("Write the line with names in braces") : tr("Write the path of the port"));
    auto* column = new QVBoxLayout;
    column->setSpacing(px(sizes::gap));
    m_typed = label(u"typed_text"_s, TextRole::Body, {}, Role::Ink, true);
    m_reads = label(u"typed_reads"_s, TextRole::Small, {}, Role::MutedInk);
    m_keys = new LetterKeys(theme(), around.upright ? 4 : 8, this);
    m_keys->setLongest(isPattern() ? LinePattern::longest : longestPort);
    m_keys->setText(isPattern() ? setting().pattern : setting().port);
    column->addWidget(m_typed, 1);
    column->addWidget(m_reads, 1);
    column->addWidget(m_keys, around.upright ? 8 : 5);
    content()->addLayout(column, 1);
    answers()->setWayOn(tr("Take it"));
    connect(m_keys, &LetterKeys::textChanged, this, &SetUpInstrumentTextScreen::showTyped);
    connect(m_keys, &LetterKeys::entered, this, &SetUpInstrumentTextScreen::give);
    connect(answers(), &AnswerBar::wayOnTapped, this, &SetUpInstrumentTextScreen::give);
    backTo({place.group, place.page, isPattern() ? details::pattern : details::port});
    showTyped();
    m_keys->setFocus();
}

bool SetUpInstrumentTextScreen::isPattern() const { return at().detail == details::patternText; }

void SetUpInstrumentTextScreen::showTyped()
{
    const QString text = m_keys->text();
    m_typed->setText(text.isEmpty() ? u"–"_s : instruments::breakable(text));
    m_typed->setAccessibleName(text);
    if (!isPattern())
        return m_reads->setText(u"/dev/ttyUSB0"_s);
    const QString line = feed() ? feed()->view().line : QString();
    const QString reads =
        text.isEmpty() ? instruments::breakable(readyPatterns(kind()).front()) : readFrom(line, kind(), text, words());
    m_reads->setText(line.isEmpty() ? reads : instruments::breakable(line) + u" · "_s + reads);
}

void SetUpInstrumentTextScreen::give()
{
    InstrumentSetting wanted = setting();
    const QString text = m_keys->text().trimmed();
    if (!isPattern()) {
        if (!text.startsWith(u'/'))
            return showTrouble(tr("A path begins with a slash."), tr("Such as /dev/ttyUSB0."));
        wanted.port = text;
    } else {
        const auto pattern = patternFor(kind(), text);
        if (!pattern)
            return showTrouble(words().fault(pattern.error().front()), {});
        wanted.pattern = text;
    }
    Q_EMIT settingsChanged(with(wanted));
}

SetUpScreen* makeSetUpInstruments(const Surroundings& around, const SetUpPlace& place, QWidget* parent)
{
    if (place.detail == details::port)
        return new SetUpPortScreen(around, place, parent);
    if (place.detail == details::speed)
        return new SetUpSpeedScreen(around, place, parent);
    if (place.detail == details::pattern)
        return new SetUpPatternScreen(around, place, parent);
    if (place.detail == details::portText || place.detail == details::patternText)
        return new SetUpInstrumentTextScreen(around, place, parent);
    return new SetUpInstrumentsScreen(around, place, parent);
}

} // namespace strandbench
