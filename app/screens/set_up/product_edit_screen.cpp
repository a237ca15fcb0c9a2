// SPDX-License-Identifier: GPL-3.0-or-later
#include "screens/set_up/product_edit_screen.h"

#include "screens/set_up/product_page_screen.h"
#include "theme/sizes.h"

#include <QGridLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace strandbench {
namespace {

constexpr TextSize figureSize{5, 3.4};

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
    const auto fields = fieldsOf(group());
    const int columns = around().upright ? 2 : fields.size() > 6 ? 5 : 3; // never more than two rows on a wide glass
    int at = 0;
    for (const SheetField* each : fields) {
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

void ProductEditScreen::showKind()
{
    setSentence(tr("What kind of filler is it?"));
    auto* grid = new QGridLayout(m_body);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(px(sizes::gap));
    const int columns = around().upright ? 2 : 3;
    int at = 0;
    for (const QString& code : allCodes<FillerClass>()) {
        TapButton* tile =
            key(u"kind_"_s + code, TapButton::Kind::Choice, Words::title(words().filler(*fromCode<FillerClass>(code))));
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
