<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Kitchen</name>
    <message numerus="yes">
        <source>%n piece(s) (%1)</source>
        <translation>
            <numerusform>%n piece (%1)</numerusform>
            <numerusform>%n pieces (%1)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Life</name>
    <message numerus="yes">
        <source>fed from %1, phased in over %n days</source>
        <translation>
            <numerusform>fed from %1, phased in over %n day</numerusform>
            <numerusform>fed from %1, phased in over %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Swaps</name>
    <message numerus="yes">
        <source>%1 and %n more</source>
        <translation>
            <numerusform>%1 and %n more</numerusform>
            <numerusform>%1 and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>eaten %1 in %n bowls</source>
        <translation>
            <numerusform>eaten %1 in %n bowl</numerusform>
            <numerusform>eaten %1 in %n bowls</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more would do, further off</source>
        <translation>
            <numerusform>%n more would do, further off</numerusform>
            <numerusform>%n more would do, further off</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not for this animal</source>
        <translation>
            <numerusform>%n not for this animal</numerusform>
            <numerusform>%n not for this animal</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n against a structure rule</source>
        <translation>
            <numerusform>%n against a structure rule</numerusform>
            <numerusform>%n against a structure rule</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in no amount within the hard rules</source>
        <translation>
            <numerusform>%n in no amount within the hard rules</numerusform>
            <numerusform>%n in no amount within the hard rules</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at their limits</source>
        <translation>
            <numerusform>%n at their limits</numerusform>
            <numerusform>%n at their limits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of unknown water</source>
        <translation>
            <numerusform>%n of unknown water</numerusform>
            <numerusform>%n of unknown water</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Waiting</name>
    <message numerus="yes">
        <source>Cut off from the server: %n entry(ies) wait.</source>
        <translation>
            <numerusform>Cut off from the server: %n entry waits.</numerusform>
            <numerusform>Cut off from the server: %n entries wait.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) wait for the server.</source>
        <translation>
            <numerusform>%n entry waits for the server.</numerusform>
            <numerusform>%n entries wait for the server.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n entry(ies) the server has something else: choose what counts.</source>
        <translation>
            <numerusform>Of %n entry the server has something else: choose what counts.</numerusform>
            <numerusform>Of %n entries the server has something else: choose what counts.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::DamageOffer</name>
    <message numerus="yes">
        <source>%n row(s) or page(s) could not be read</source>
        <translation>
            <numerusform>%n row or page could not be read</numerusform>
            <numerusform>%n rows or pages could not be read</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) left out, what they belong to is lost</source>
        <translation>
            <numerusform>%n row left out, what it belongs to is lost</numerusform>
            <numerusform>%n rows left out, what they belong to is lost</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n saved row(s) lay beside damaged ones: look at them</source>
        <translation>
            <numerusform>%n saved row lay beside damaged ones: look at it</numerusform>
            <numerusform>%n saved rows lay beside damaged ones: look at them</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) could not be told to any table</source>
        <translation>
            <numerusform>%n page could not be told to any table</numerusform>
            <numerusform>%n pages could not be told to any table</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::NumberField</name>
    <message numerus="yes">
        <source>“%1” is finer than what counts here: %n digit(s) after the decimal mark.</source>
        <translation>
            <numerusform>“%1” is finer than what counts here: %n digit after the decimal mark.</numerusform>
            <numerusform>“%1” is finer than what counts here: %n digits after the decimal mark.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::OpenCollection</name>
    <message numerus="yes">
        <source>cut off from the server: %n entry(ies) wait</source>
        <translation>
            <numerusform>cut off from the server: %n entry waits</numerusform>
            <numerusform>cut off from the server: %n entries wait</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tarebowl::ui::TraceChart</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Files</name>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) ahead of the server&apos;s.</source>
        <translation>
            <numerusform>This machine&apos;s clock is %n minute ahead of the server&apos;s.</numerusform>
            <numerusform>This machine&apos;s clock is %n minutes ahead of the server&apos;s.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>This machine&apos;s clock is %n minute(s) behind the server&apos;s.</source>
        <translation>
            <numerusform>This machine&apos;s clock is %n minute behind the server&apos;s.</numerusform>
            <numerusform>This machine&apos;s clock is %n minutes behind the server&apos;s.</numerusform>
        </translation>
    </message>
</context>
</TS>
