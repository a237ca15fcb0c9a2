// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/product_edit_screen.h"

#include "screens/note_screens.h"
#include "screens/product_page_screen.h"
#include "theme/sizes.h"
#include "touch/key_pad.h"
#include "touch/letter_keys.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestName = 60;
constexpr TextSize figureSize{5, 3.4};
constexpr double beyondAny = 1e12; ///< no field of a sheet takes it

const std::vector<SheetGroup>& groups()
{
    static const std::vector<SheetGroup> all{SheetGroup::Product, SheetGroup::Times, SheetGroup::Hardener,
                                             SheetGroup::Limits,  SheetGroup::Heat,  SheetGroup::Law};
    return all;
}

std::optional<Fault> faultOf(const Faults& faults, const QString& path)
{
    const auto found = std::ranges::find(faults, path, &Fault::field);
    return found == faults.end() ? std::nullopt : std::optional(*found);
}

/// A name as it is read: its first letter large.
QString asName(const QString& typed)
{
    QString name = typed.simplified();
    if (!name.isEmpty())
        name[0] = name.at(0).toUpper();
    return name;
}

} // namespace

ProductEditScreen::ProductEditScreen(const Surroundings& around, Spec spec, QWidget* parent)
    : Screen(around, u"screen_set_up_product_edit"_s, parent), m_spec(std::move(spec)), m_say(around.words)
{
    buildFrame({}, {});
    answers()->stop()->hide();
    disconnect(answers(), &AnswerBar::backTapped, this, &Screen::backTapped);
    connect(answers(), &AnswerBar::backTapped, this, &ProductEditScreen::back);
    connect(answers(), &AnswerBar::wayOnTapped, this, &ProductEditScreen::wayOn);
    if (m_spec.atTheEnd) {
        m_view = View::End;
        m_group = static_cast<int>(groups().size()) - 1;
    }
    show();
}

SheetGroup ProductEditScreen::group() const { return groups()[static_cast<std::size_t>(m_group)]; }

Faults ProductEditScreen::faults() const
{
    const auto sheet = m_spec.draft.sheet();
    if (sheet)
        return {};
    Faults all = sheet.error();
    // A new sheet's id comes with its name: what the name lacks is told once.
    std::erase_if(all, [](const Fault& each) { return each.field == u"id"_s; });
    return all;
}

std::vector<const SheetField*> ProductEditScreen::fieldsOf(SheetGroup group) const
{
    std::vector<const SheetField*> all;
    for (const SheetField& each : sheetFields())
        if (each.group == group && belongs(each, m_spec.draft.filler()))
            all.push_back(&each);
    return all;
}

void ProductEditScreen::later(View view)
{
    m_view = view;
    QMetaObject::invokeMethod(this, &ProductEditScreen::show, Qt::QueuedConnection); // the tapped key is of the body
}

void ProductEditScreen::show()
{
    delete m_body;
    m_body = new QWidget(this);
    content()->addWidget(m_body, 1);
    m_keys = nullptr;
    m_letters = nullptr;
    const QString name = m_spec.draft.value(u"name"_s).toString();
    QStringList context{tr("Product sheets"), name.isEmpty() ? tr("a new sheet") : name};
    if (m_view == View::Fields)
        context << tr("page %1 of %2").arg(m_group + 1).arg(groups().size());
    setContext(context.join(u" · "_s));
    answers()->wayOn()->setSecondLine({});
    answers()->setWayOnEnabled(true);
    switch (m_view) {
    case View::Fields:
        showFields();
        break;
    case View::Number:
        showNumber();
        break;
    case View::Name:
        showName();
        break;
    case View::Kind:
        showKind();
        break;
    case View::End:
        showEnd();
        break;
    }
    m_body->show();
}

TapButton* ProductEditScreen::key(const QString& name, TapButton::Kind kind, const QString& title)
{
    auto* made = new TapButton(theme(), name, kind, m_body);
    made->setLeastSize(sizes::denseTarget, sizes::denseTarget);
    made->setTitle(title);
    made->setTitleSize(figureSize);
    made->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    return made;
}

TapButton* ProductEditScreen::tile(const SheetField& field, const Faults& faults)
{
    const QJsonValue value = m_spec.draft.value(field.path);
    const std::optional<Fault> fault = faultOf(faults, field.path);
    const bool missing = value.isUndefined();
    const bool wrong = fault && !missing;
    const bool assumed = m_spec.draft.isAssumed(field.path);
    const QString figure = m_say.figure(field, value);
    QString second = SheetWords::name(field.path);
    if (wrong)
        second += u" · "_s + tr("does not fit");
    else if (assumed)
        second += u" · "_s + tr("assumed");
    else if (missing && !field.mayBeLeftOut)
        second += u" · "_s + tr("missing");
    TapButton* made = key(u"field_"_s + field.path,
                          wrong     ? TapButton::Kind::Stop
                          : assumed ? TapButton::Kind::Quiet
                                    : TapButton::Kind::Plain,
                          !figure.isEmpty()    ? figure
                          : field.mayBeLeftOut ? tr("the model’s own")
                                               : u"–"_s);
    made->setSecondLine(second);
    connect(made, &TapButton::clicked, this, [this, &field] { tapped(field); });
    return made;
}

void ProductEditScreen::showFields()
{
    setSentence(SheetWords::group(group()));
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(2));
    auto* grid = new QGridLayout;
    grid->setSpacing(px(sizes::gap));
    const Faults wrong = faults();
    const int columns = around().upright ? 2 : 3;
    int at = 0;
    for (const SheetField* each : fieldsOf(group())) {
        grid->addWidget(tile(*each, wrong), at / columns, at % columns);
        grid->setRowStretch(at / columns, 1);
        ++at;
    }
    for (int i = 0; i < columns; ++i)
        grid->setColumnStretch(i, 1);
    column->addLayout(grid, 1);
    auto* fault = label(u"page_fault"_s, TextRole::Body, pageFault(wrong));
    fault->setParent(m_body);
    fault->setFixedHeight(px(around().upright ? 14 : 10));
    column->addWidget(fault);
    const auto next = static_cast<std::size_t>(m_group) + 1;
    answers()->setWayOn(next < groups().size() ? SheetWords::group(groups()[next]) : tr("What it comes to"));
    answers()->wayOn()->setSecondLine(tr("next page"));
}

QString ProductEditScreen::pageFault(const Faults& faults) const
{
    for (const SheetField* each : fieldsOf(group()))
        if (const auto fault = faultOf(faults, each->path); fault && m_spec.draft.holds(each->path))
            return m_say.fault(*fault);
    const auto fields = fieldsOf(group());
    if (std::ranges::any_of(fields, [&](const SheetField* each) { return m_spec.draft.isAssumed(each->path); }))
        return tr("What is assumed is common for such fillers, without a source. Put in what your data sheet says.");
    return {};
}

void ProductEditScreen::tapped(const SheetField& field)
{
    m_field = &field;
    switch (field.kind) {
    case SheetFieldKind::Flag:
        change(field.path, !m_spec.draft.value(field.path).toBool());
        return later(View::Fields);
    case SheetFieldKind::Filler:
        return later(View::Kind);
    case SheetFieldKind::Text:
        return later(View::Name);
    case SheetFieldKind::Number:
    case SheetFieldKind::Whole:
        break;
    }
    m_minus = m_spec.draft.value(field.path).toDouble() < 0;
    later(View::Number);
}

void ProductEditScreen::change(const QString& path, const QJsonValue& value)
{
    if (path == u"name"_s && m_spec.isNew)
        m_spec.draft.name(value.toString(), m_spec.taken);
    else
        m_spec.draft.set(path, value);
    Q_EMIT draftChanged(m_spec.draft);
}

QString ProductEditScreen::allowedText(const SheetField& field) const
{
    SheetDraft probe = m_spec.draft;
    probe.set(field.path, beyondAny);
    const auto sheet = probe.sheet();
    const auto fault = sheet ? std::nullopt : faultOf(sheet.error(), field.path);
    if (!fault || fault->kind != FaultKind::OutOfRange)
        return {};
    //: a range: "0.3 g/ml to 4 g/ml"
    return tr("Allowed: %1 to %2")
        .arg(m_say.figure(field, fault->allowed.value(0).toDouble()),
             m_say.figure(field, fault->allowed.value(1).toDouble()));
}

void ProductEditScreen::showNumber()
{
    setSentence(SheetWords::name(m_field->path));
    auto* row = new QBoxLayout(around().upright ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight, m_body);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(px(sizes::gap));
    auto* left = new QVBoxLayout;
    left->setSpacing(px(2));
    m_typed = label(u"typed"_s, TextRole::BigFigure, {}, Role::Ink, true);
    m_typed->setAlignment(Qt::AlignCenter);
    m_fault = label(u"typed_fault"_s, TextRole::Body);
    for (FitLabel* each : {m_typed, m_fault}) {
        each->setParent(m_body);
        left->addWidget(each, 1);
    }
    if (m_field->unit == u"°C") {
        TapButton* minus = key(u"key_minus"_s, TapButton::Kind::Plain, tr("below 0: −"));
        connect(minus, &TapButton::clicked, this, [this] {
            m_minus = !m_minus;
            typed(m_keys->text());
        });
        left->addWidget(minus);
    }
    row->addLayout(left, 2);
    m_keys = new KeyPad(theme(), around().upright ? 4 : 6, m_body);
    m_keys->setPointSign(words().locale().decimalPoint());
    m_keys->setPointAllowed(m_field->kind == SheetFieldKind::Number);
    m_keys->setLongest(10);
    row->addWidget(m_keys, 4);
    connect(m_keys, &KeyPad::textChanged, this, &ProductEditScreen::typed);
    answers()->setWayOn(m_field->mayBeLeftOut ? tr("Take it, or leave it empty") : tr("Take this figure"));
    typed({});
    m_keys->setFocus();
}

Checked<QJsonValue> ProductEditScreen::typedValue() const
{
    const QString text = m_keys->text();
    if (text.isEmpty() && m_field->mayBeLeftOut)
        return QJsonValue(QJsonValue::Undefined);
    return m_say.parse(*m_field, (m_minus ? u"-"_s : QString()) + text).map([](double number) {
        return QJsonValue(number);
    });
}

void ProductEditScreen::typed(const QString& text)
{
    QString shown = text;
    shown.replace(u'.', words().locale().decimalPoint());
    if (shown.isEmpty())
        shown = u"–"_s;
    else if (m_minus)
        shown.prepend(u'−');
    const QString unit = m_say.unit(*m_field);
    m_typed->setText(unit.isEmpty() ? shown : shown + QChar(0x00a0) + unit);
    const auto value = typedValue();
    std::optional<Fault> fault;
    if (!value) {
        fault = value.error().front();
    } else {
        SheetDraft next = m_spec.draft;
        next.set(m_field->path, *value);
        if (const auto sheet = next.sheet(); !sheet)
            fault = faultOf(sheet.error(), m_field->path);
    }
    const bool nothing = text.isEmpty() && !m_field->mayBeLeftOut;
    m_fault->setRole(fault && !nothing ? Role::Stop : Role::MutedInk);
    m_fault->setBold(fault && !nothing);
    m_fault->setText(fault && !nothing ? m_say.fault(*fault) : allowedText(*m_field));
    // What does not agree with another field may be taken: the other may be the one that is wrong.
    answers()->setWayOnEnabled(!nothing && (!fault || fault->kind == FaultKind::Conflicts));
}

void ProductEditScreen::takeTyped()
{
    if (const auto value = typedValue()) {
        change(m_field->path, *value);
        later(View::Fields);
    }
}

void ProductEditScreen::showName()
{
    setSentence(tr("Write the product’s name"));
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(px(sizes::gap));
    m_typed = label(u"typed_name"_s, TextRole::Title);
    m_typed->setParent(m_body);
    m_letters = new LetterKeys(theme(), around().upright ? 4 : 8, accentsOf(words().locale()), m_body);
    m_letters->setLongest(longestName);
    m_letters->setText(m_spec.draft.value(u"name"_s).toString());
    column->addWidget(m_typed, 1);
    column->addWidget(m_letters, around().upright ? 4 : 3);
    const auto showTyped = [this] {
        const QString name = asName(m_letters->text());
        m_typed->setText(name.isEmpty() ? u"–"_s : name);
        answers()->setWayOnEnabled(!name.isEmpty());
    };
    connect(m_letters, &LetterKeys::textChanged, this, showTyped);
    connect(m_letters, &LetterKeys::entered, this, &ProductEditScreen::takeName);
    answers()->setWayOn(tr("Take this name"));
    showTyped();
    m_letters->setFocus();
}

void ProductEditScreen::takeName()
{
    const QString name = asName(m_letters->text());
    if (name.isEmpty())
        return;
    change(u"name"_s, name);
    later(View::Fields);
}

void ProductEditScreen::showKind()
{
    setSentence(tr("What kind of filler is it?"));
    auto* grid = new QGridLayout(m_body);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const int columns = around().upright ? 2 : 3;
    int at = 0;
    for (const QString& code : allCodes<FillerClass>()) {
        TapButton* tile = key(u"kind_"_s + code, TapButton::Kind::Choice,
                              Words::title(words().filler(*fromCode<FillerClass>(code))));
        tile->setChecked(code == m_spec.draft.value(u"filler_class"_s).toString());
        connect(tile, &TapButton::clicked, this, [this, code] {
            change(u"filler_class"_s, code);
            later(View::Fields);
        });
        grid->addWidget(tile, at / columns, at % columns);
        ++at;
    }
    answers()->setWayOn({});
}

QString ProductEditScreen::stillMissing(const Faults& faults) const
{
    QStringList names;
    for (const Fault& each : faults)
        names << (each.kind == FaultKind::Missing ? SheetWords::name(each.field) : m_say.fault(each));
    constexpr qsizetype most = 6;
    if (names.size() > most)
        names = names.mid(0, most) << u"…"_s;
    return tr("Still missing or wrong: %1").arg(names.join(u"; "_s));
}

void ProductEditScreen::showEnd()
{
    setSentence(tr("What the engine makes of this sheet"));
    auto* column = new QVBoxLayout(m_body);
    column->setContentsMargins(0, 0, 0, 0);
    auto* outlook = new ProductOutlook(around(), m_body);
    column->addWidget(outlook, 1);
    answers()->setWayOn(tr("Keep this sheet"));
    answers()->wayOn()->setSecondLine(tr("asks for the supervisor’s PIN"));
    answers()->setWayOnEnabled(false);
    const auto sheet = m_spec.draft.sheet();
    if (!sheet)
        return outlook->showNone(stillMissing(faults()));
    connect(outlook, &ProductOutlook::shown, this, [this](bool found) { answers()->setWayOnEnabled(found); });
    outlook->show(*sheet);
}

void ProductEditScreen::wayOn()
{
    switch (m_view) {
    case View::Fields:
        if (m_group + 1 == static_cast<int>(groups().size()))
            return later(View::End);
        ++m_group;
        return later(View::Fields);
    case View::Number:
        return takeTyped();
    case View::Name:
        return takeName();
    case View::Kind:
        return;
    case View::End:
        break;
    }
    Q_EMIT keepWanted(m_spec.draft.toJson());
}

void ProductEditScreen::back()
{
    if (m_view != View::Fields)
        return later(View::Fields);
    if (m_group == 0) {
        Q_EMIT backTapped();
        return;
    }
    --m_group;
    later(View::Fields);
}

} // namespace strandbench
