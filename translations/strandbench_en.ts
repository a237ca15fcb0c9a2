<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>Deviations</name>
    <message numerus="yes">
        <source>%n deviation(s)</source>
        <translation>
            <numerusform>%n deviation</numerusform>
            <numerusform>%n deviations</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Outlooks</name>
    <message numerus="yes">
        <source>%n lift(s).</source>
        <translation>
            <numerusform>%n lift.</numerusform>
            <numerusform>%n lifts.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message numerus="yes">
        <source>%n more mix(es) running</source>
        <translation>
            <numerusform>%n more mix running</numerusform>
            <numerusform>%n more mixes running</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>from %n batch(es) of this lot</source>
        <translation>
            <numerusform>from %n batch of this lot</numerusform>
            <numerusform>from %n batches of this lot</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>from %n other lot(s) of this product</source>
        <translation>
            <numerusform>from %n other lot of this product</numerusform>
            <numerusform>from %n other lots of this product</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Roles</name>
    <message numerus="yes">
        <source>+%n more</source>
        <translation>
            <numerusform>+%n more</numerusform>
            <numerusform>+%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n batch</numerusform>
            <numerusform>%n batches</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::BenchWindow</name>
    <message numerus="yes">
        <source>%n act(s) not saved yet: the disk refuses. They are kept and tried again.</source>
        <translation>
            <numerusform>%n act not saved yet: the disk refuses. It is kept and tried again.</numerusform>
            <numerusform>%n acts not saved yet: the disk refuses. They are kept and tried again.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::HomeScreen</name>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n in all</numerusform>
            <numerusform>%n in all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::MixesScreen</name>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n in all</numerusform>
            <numerusform>%n in all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::PinScreen</name>
    <message numerus="yes">
        <source>%n digit(s)</source>
        <translation>
            <numerusform>%n digit</numerusform>
            <numerusform>%n digits</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::RefusalScreen</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::TodayScreen</name>
    <message numerus="yes">
        <source>%n entry(ies): clocks, refused acts, PIN</source>
        <translation>
            <numerusform>%n entry: clocks, refused acts, PIN</numerusform>
            <numerusform>%n entries: clocks, refused acts, PIN</numerusform>
        </translation>
    </message>
</context>
</TS>
