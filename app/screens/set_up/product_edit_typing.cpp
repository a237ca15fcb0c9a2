// SPDX-License-Identifier: GPL-3.0-or-later
// One field of a product sheet while it is typed: a figure on the key pad, a name on the letters.
#include "screens/beside/note_screens.h"
#include "screens/set_up/product_edit_screen.h"
#include "theme/sizes.h"
#include "touch/key_pad.h"
#include "touch/letter_keys.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr int longestName = 60;
constexpr double beyondAny = 1e12; ///< no field of a sheet takes it

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

} // namespace strandbench
