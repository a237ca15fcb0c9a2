// SPDX-License-Identifier: GPL-3.0-or-later
// Help at one place: what the step is for, how it goes, what goes wrong, where its limit comes from; and the keys to
// words, legend and quick card.
#pragma once

#include "screens/frame/screen.h"
#include "words/help_words.h"

namespace strandbench {

enum class HelpPage { Words, Legend, QuickCard };

class HelpScreen final : public Screen {
    Q_OBJECT
public:
    struct Spec {
        HelpTopic topic = HelpTopic::Home;
        QString context;        ///< of the repair that is worked at
        bool ofARepair = false; ///< 'stop, ask' is of a repair: elsewhere there is nothing to stop
        bool offersCard = true; ///< the quick card tells limits
    };
    HelpScreen(const Surroundings& around, const Spec& spec, QWidget* parent = nullptr);

Q_SIGNALS:
    void pageWanted(strandbench::HelpPage page);

private:
    [[nodiscard]] QWidget* lines(HelpTopic topic);
    [[nodiscard]] QLayout* keys(bool offersCard);
};

/// The drawing that stands for a topic, beside its first line, as paintDrawing names it.
[[nodiscard]] QString drawingOf(HelpTopic topic);

} // namespace strandbench
