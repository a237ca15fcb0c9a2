// SPDX-License-Identifier: GPL-3.0-or-later
// A product sheet is typed: a page of fields after the other, each checked as it is typed, and at the end what the
// engine makes of it. What is wrong keeps the way on shut at the end alone, so that any order will do.
#pragma once

#include "exchange/sheet_draft.h"
#include "screens/frame/screen.h"
#include "words/sheet_words.h"

class QGridLayout;

namespace strandbench {

class KeyPad;
class LetterKeys;
class ProductOutlook;

class ProductEditScreen final : public Screen {
    Q_OBJECT
public:
    struct Spec {
        SheetDraft draft;
        bool isNew = true;     ///< its id follows from its name
        QSet<QString> taken;   ///< ids that it may not have then
        bool atTheEnd = false; ///< begins with what the engine makes of it
    };
    ProductEditScreen(const Surroundings& around, Spec spec, QWidget* parent = nullptr);

Q_SIGNALS:
    void draftChanged(const strandbench::SheetDraft& draft);
    void keepWanted(const QByteArray& bytes); ///< of the draft as it stands

private:
    enum class View { Fields, Number, Name, Kind, End };
    void later(View view);
    void show();
    void showFields();
    void showNumber();
    void showName();
    void showKind();
    void showEnd();
    void wayOn();
    void back();
    void tapped(const SheetField& field);
    void change(const QString& path, const QJsonValue& value);
    void typed(const QString& text);
    void takeTyped();
    void takeName();
    /// The value that is being typed; undefined where it is to be left out.
    [[nodiscard]] Checked<QJsonValue> typedValue() const;
    [[nodiscard]] TapButton* tile(const SheetField& field, const Faults& faults);
    [[nodiscard]] TapButton* key(const QString& name, TapButton::Kind kind, const QString& title);
    [[nodiscard]] std::vector<const SheetField*> fieldsOf(SheetGroup group) const;
    [[nodiscard]] Faults faults() const;
    [[nodiscard]] QString allowedText(const SheetField& field) const;
    [[nodiscard]] QString pageFault(const Faults& faults) const;
    [[nodiscard]] QString stillMissing(const Faults& faults) const;
    [[nodiscard]] SheetGroup group() const;

    Spec m_spec;
    SheetWords m_say;
    View m_view = View::Fields;
    int m_group = 0;
    const SheetField* m_field = nullptr; ///< that is typed
    bool m_minus = false;
    QWidget* m_body = nullptr;
    FitLabel* m_typed = nullptr;
    FitLabel* m_fault = nullptr;
    KeyPad* m_keys = nullptr;
    LetterKeys* m_letters = nullptr;
};

} // namespace strandbench
