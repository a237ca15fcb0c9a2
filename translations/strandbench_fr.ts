<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
<context>
    <name>Air</name>
    <message>
        <source>Styrene</source>
        <translation>Styrène</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Acétone</translation>
    </message>
    <message>
        <source>Wax remover, as naphtha</source>
        <translation>Dégraissant, compté comme naphta</translation>
    </message>
    <message>
        <source>mean of 8 hours</source>
        <translation>moyenne sur 8 heures</translation>
    </message>
    <message>
        <source>mean of 15 minutes</source>
        <translation>moyenne sur 15 minutes</translation>
    </message>
    <message>
        <source>at any time</source>
        <translation>à tout moment</translation>
    </message>
    <message>
        <source>mean of 5 minutes</source>
        <translation>moyenne sur 5 minutes</translation>
    </message>
    <message>
        <source>danger to life at once</source>
        <translation>danger immédiat pour la vie</translation>
    </message>
    <message>
        <source>under %1 ppm</source>
        <extracomment>so much of a vapour in the air; %1 is a figure</extracomment>
        <translation>moins de %1 ppm</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>from so much to so much of a vapour in the air</extracomment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <extracomment>a published limit: its name, what it is a mean of, how much</extracomment>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Reckoned %1: above it. Ventilate now.</source>
        <translation>Calculé %1&#xa0;: au-dessus. Ventiler tout de suite.</translation>
    </message>
    <message>
        <source>Reckoned %1: may be above it. Ventilate now.</source>
        <translation>Calculé %1&#xa0;: peut-être au-dessus. Ventiler tout de suite.</translation>
    </message>
    <message>
        <source>Reckoned %1: up to %2 of it</source>
        <translation>Calculé %1&#xa0;: jusqu’à %2 de la limite</translation>
    </message>
    <message>
        <source>Spray can: it can be lit at any temperature.</source>
        <translation>Aérosol&#xa0;: peut s’enflammer à toute température.</translation>
    </message>
    <message>
        <source>Flash point below %1 by its class: take it that it can be lit now.</source>
        <translation>Point d’éclair sous %1 selon sa classe&#xa0;: considérer qu’il peut s’enflammer maintenant.</translation>
    </message>
    <message>
        <source>Flash point %1; air not read yet.</source>
        <translation>Point d’éclair %1 ; air non mesuré.</translation>
    </message>
    <message>
        <source>Flash point %1; the air is %2 below it, a warm spot may not be.</source>
        <translation>Point d’éclair %1&#xa0;; l’air est %2 en dessous, un point chaud peut-être pas.</translation>
    </message>
    <message>
        <source>Flash point %1: it can be lit now.</source>
        <translation>Point d’éclair %1&#xa0;: peut s’enflammer maintenant.</translation>
    </message>
</context>
<context>
    <name>AirScreen</name>
    <message>
        <source>What about the air?</source>
        <translation>Et l’air&#xa0;?</translation>
    </message>
    <message>
        <source>Dew</source>
        <translation>Rosée</translation>
    </message>
    <message>
        <source>how far the panel was above its dew point, day by day</source>
        <translation>l’écart du panneau à son point de rosée, jour par jour</translation>
    </message>
    <message>
        <source>Vapour</source>
        <translation>Vapeur</translation>
    </message>
    <message>
        <source>styrene and solvents in the room, beside published limits</source>
        <translation>styrène et solvants dans le local, face aux limites publiées</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Feu</translation>
    </message>
    <message>
        <source>flash points, and what can light them</source>
        <translation>points d’éclair, et ce qui peut enflammer</translation>
    </message>
</context>
<context>
    <name>AnswerBar</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Stop and ask</source>
        <translation>Stop, demander</translation>
    </message>
</context>
<context>
    <name>AnswersScreen</name>
    <message>
        <source>Which answer was wrong?</source>
        <translation>Quelle réponse était fausse&#xa0;?</translation>
    </message>
    <message>
        <source>These were the answers</source>
        <translation>Voici les réponses données</translation>
    </message>
    <message>
        <source>All right: go on</source>
        <translation>Tout bon : continuer</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Autres réponses</translation>
    </message>
    <message>
        <source>Finishing filler is on: the answers stand.</source>
        <translation>Finition posée&#xa0;: les réponses restent.</translation>
    </message>
    <message>
        <source>If one was wrong, stop and ask.</source>
        <translation>Une fausse&#xa0;? Arrêter et demander.</translation>
    </message>
</context>
<context>
    <name>AskScreen</name>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Change an answer</source>
        <translation>Changer une réponse</translation>
    </message>
    <message>
        <source>The mix on this panel goes on curing and its clock runs on.</source>
        <translation>Le mélange sur ce panneau continue de durcir, son chrono tourne.</translation>
    </message>
    <message>
        <source>Nothing is lost: parked, it waits on the rail at this very step.</source>
        <translation>Rien n’est perdu&#xa0;: en attente au bandeau, à cette étape.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Stop here and ask</source>
        <translation>Arrêter et demander</translation>
    </message>
    <message>
        <source>Ask the supervisor before you go on.</source>
        <translation>Demander au chef d’atelier avant de continuer.</translation>
    </message>
    <message>
        <source>The safety data sheet and the maker’s repair manual come first.</source>
        <translation>La fiche de sécurité et le manuel du constructeur priment.</translation>
    </message>
    <message>
        <source>Answered: go on</source>
        <translation>Répondu&#xa0;: continuer</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Attente</translation>
    </message>
    <message>
        <source>Why is it parked?</source>
        <translation>Pourquoi en attente&#xa0;?</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Park it: where, or with whom?</source>
        <translation>En attente&#xa0;: où, ou chez qui&#xa0;?</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>En attente</translation>
    </message>
    <message>
        <source>Parked: %1</source>
        <translation>En attente&#xa0;: %1</translation>
    </message>
    <message>
        <source>It was parked to ask.</source>
        <translation>En attente d’une réponse.</translation>
    </message>
    <message>
        <source>Go on only when the answer is there.</source>
        <translation>Continuer seulement avec la réponse.</translation>
    </message>
    <message>
        <source>Taken up again, it goes on at the very step where it was.</source>
        <translation>Repris, il continue à l’étape où il était.</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>When what was wrong has been put right, assess it again from the first question.</source>
        <translation>Défaut corrigé&#xa0;: réévaluer dès la première question.</translation>
    </message>
    <message>
        <source>Leave it parked</source>
        <translation>Laisser en attente</translation>
    </message>
    <message>
        <source>Assess again</source>
        <translation>Réévaluer</translation>
    </message>
</context>
<context>
    <name>AssessScreen</name>
    <message>
        <source>Keep this answer</source>
        <translation>Garder cette réponse</translation>
    </message>
    <message>
        <source>Show me how to tell</source>
        <translation>Comment le voir</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Autres réponses</translation>
    </message>
    <message>
        <source>Back to the question</source>
        <translation>Retour à la question</translation>
    </message>
    <message>
        <source>What did you go by?</source>
        <translation>À quoi l’avez-vous reconnu&#xa0;?</translation>
    </message>
</context>
<context>
    <name>Assumptions</name>
    <message>
        <source>Kneading, until spreading begins</source>
        <translation>Malaxage, jusqu’à l’étalement</translation>
    </message>
    <message>
        <source>Spreading rate</source>
        <translation>Débit d’étalement</translation>
    </message>
    <message>
        <source>Clear the edges from, share of gel time</source>
        <translation>Dégager les bords dès, part du temps de prise</translation>
    </message>
    <message>
        <source>Laying puddle and bead</source>
        <translation>Poser galette et cordon</translation>
    </message>
    <message>
        <source>Sanding one lift</source>
        <translation>Ponçage d’une passe</translation>
    </message>
    <message>
        <source>Turning the panel</source>
        <translation>Retourner le panneau</translation>
    </message>
    <message>
        <source>Cure before primer, at 20 °C</source>
        <translation>Durcir avant apprêt, à 20&#xa0;°C</translation>
    </message>
    <message>
        <source>Filler at the start, warmer than air by</source>
        <translation>Mastic au départ, plus chaud que l’air de</translation>
    </message>
    <message>
        <source>Mixing board, side</source>
        <translation>Palette, côté</translation>
    </message>
    <message>
        <source>Mixing board, thickness</source>
        <translation>Palette, épaisseur</translation>
    </message>
    <message>
        <source>Mixing board, density</source>
        <translation>Palette, masse volumique</translation>
    </message>
    <message>
        <source>Mixing board, specific heat</source>
        <translation>Palette, chaleur massique</translation>
    </message>
    <message>
        <source>Mixing board, conductivity</source>
        <translation>Palette, conductivité</translation>
    </message>
    <message>
        <source>Left on the board, share</source>
        <translation>Reste sur palette, part</translation>
    </message>
    <message>
        <source>Left on the board, each batch</source>
        <translation>Reste sur palette, par mélange</translation>
    </message>
    <message>
        <source>Bridged first, share of a hole’s height</source>
        <translation>Ponté d’abord, part de la hauteur du trou</translation>
    </message>
    <message>
        <source>Built proud of the surface</source>
        <translation>Surépaisseur sur la surface</translation>
    </message>
    <message>
        <source>Fibre filler left low</source>
        <translation>Mastic fibre en retrait</translation>
    </message>
    <message>
        <source>Skim beyond the opening</source>
        <translation>Finition au-delà de l’ouverture</translation>
    </message>
    <message>
        <source>Backing laps by</source>
        <translation>Renfort recouvre de</translation>
    </message>
    <message>
        <source>Backing, thickness</source>
        <translation>Renfort, épaisseur</translation>
    </message>
    <message>
        <source>Panel below the cavity counts from</source>
        <translation>Panneau sous la cavité, compté dès</translation>
    </message>
    <message>
        <source>Hole filled without backing, up to</source>
        <translation>Trou mastiqué sans renfort, jusqu’à</translation>
    </message>
    <message>
        <source>The same without reach from behind</source>
        <translation>De même, sans accès par derrière</translation>
    </message>
    <message>
        <source>Greatest hole filled</source>
        <translation>Trou maximal mastiqué</translation>
    </message>
    <message>
        <source>Greatest hole for dense short strand</source>
        <translation>Trou maximal, fibre courte dense</translation>
    </message>
    <message>
        <source>Deepest dent filled in metal</source>
        <translation>Creux maximal mastiqué, métal</translation>
    </message>
    <message>
        <source>Dent to aim at in metal</source>
        <translation>Creux visé en métal</translation>
    </message>
    <message>
        <source>Panel, coldest</source>
        <translation>Panneau, minimum</translation>
    </message>
    <message>
        <source>Panel, caution below</source>
        <translation>Panneau, attention sous</translation>
    </message>
    <message>
        <source>Panel, hottest</source>
        <translation>Panneau, maximum</translation>
    </message>
    <message>
        <source>Air, coldest</source>
        <translation>Air, minimum</translation>
    </message>
    <message>
        <source>Air, hottest</source>
        <translation>Air, maximum</translation>
    </message>
    <message>
        <source>Panel above dew point by</source>
        <translation>Marge de rosée du panneau</translation>
    </message>
    <message>
        <source>Peak on laminate and SMC</source>
        <translation>Maximum sur stratifié et SMC</translation>
    </message>
    <message>
        <source>Peak on a bond seam</source>
        <translation>Maximum sur joint collé</translation>
    </message>
    <message>
        <source>Heat to the air in front</source>
        <translation>Chaleur vers l’air, devant</translation>
    </message>
    <message>
        <source>Heat to the air behind</source>
        <translation>Chaleur vers l’air, derrière</translation>
    </message>
    <message>
        <source>Laminate and SMC, density</source>
        <translation>Stratifié et SMC, masse volumique</translation>
    </message>
    <message>
        <source>Laminate and SMC, specific heat</source>
        <translation>Stratifié et SMC, chaleur massique</translation>
    </message>
    <message>
        <source>Laminate and SMC, conductivity</source>
        <translation>Stratifié et SMC, conductivité</translation>
    </message>
    <message>
        <source>Steel, density</source>
        <translation>Acier, masse volumique</translation>
    </message>
    <message>
        <source>Steel, specific heat</source>
        <translation>Acier, chaleur massique</translation>
    </message>
    <message>
        <source>Steel, conductivity</source>
        <translation>Acier, conductivité</translation>
    </message>
    <message>
        <source>Aluminium, density</source>
        <translation>Aluminium, masse volumique</translation>
    </message>
    <message>
        <source>Aluminium, specific heat</source>
        <translation>Aluminium, chaleur massique</translation>
    </message>
    <message>
        <source>Aluminium, conductivity</source>
        <translation>Aluminium, conductivité</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a range: &quot;10 to 180 s&quot;</extracomment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Air of the room</source>
        <translation>Air du local</translation>
    </message>
    <message>
        <source>Air of the room, changes an hour</source>
        <translation>Air du local, renouvellements par heure</translation>
    </message>
    <message>
        <source>Solvent, each wiping down</source>
        <translation>Solvant, chaque essuyage</translation>
    </message>
    <message>
        <source>Solvent, gone after</source>
        <translation>Solvant, évaporé après</translation>
    </message>
</context>
<context>
    <name>BeadScreen</name>
    <message>
        <source>Key in the hardener weighed</source>
        <translation>Saisir le durcisseur pesé</translation>
    </message>
    <message>
        <source>Key in the length of the bead laid</source>
        <translation>Saisir la longueur du cordon posé</translation>
    </message>
    <message>
        <source>Hardener %1 of filler.</source>
        <translation>Durcisseur : %1 du mastic.</translation>
    </message>
    <message>
        <source>Within the sheet’s %1 to %2.</source>
        <translation>Dans la fiche : %1 à %2.</translation>
    </message>
    <message>
        <source>Little: it cures slowly and may stay soft at the edges.</source>
        <translation>Peu : il durcit lentement et peut rester mou aux bords.</translation>
    </message>
    <message>
        <source>Much: it gels early, and may bleed and pinhole.</source>
        <translation>Beaucoup : prise précoce, peut ressuer et se piquer.</translation>
    </message>
    <message>
        <source>Outside %1 to %2: do not use this mix. Spread it thin to cure, mix anew.</source>
        <translation>Hors de %1 à %2 : ne pas utiliser. L’étaler fin pour durcir, refaire un mélange.</translation>
    </message>
    <message>
        <source>How much hardener was weighed?</source>
        <translation>Combien de durcisseur pesé ?</translation>
    </message>
    <message>
        <source>How long is the bead laid?</source>
        <translation>Quelle longueur de cordon posée ?</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Durcisseur mis : départ</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesé</translation>
    </message>
    <message>
        <source>laid</source>
        <translation>posé</translation>
    </message>
</context>
<context>
    <name>BeadTrial</name>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Key in the length of the bead</source>
        <translation>Saisir la longueur du cordon</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Key in the mass of the bead</source>
        <translation>Saisir la masse du cordon</translation>
    </message>
    <message>
        <source>Lay it on card or foil, straight and at the usual push. Tare, then weigh.</source>
        <translation>Le poser sur carton ou film, droit, à la poussée habituelle. Tarer, puis peser.</translation>
    </message>
    <message>
        <source>%1 cannot be: look at length and mass again.</source>
        <translation>%1 est impossible&#xa0;: revoir longueur et masse.</translation>
    </message>
    <message>
        <source>This bead: %1</source>
        <translation>Ce cordon&#xa0;: %1</translation>
    </message>
    <message>
        <source>Hardener %1</source>
        <translation>Durcisseur %1</translation>
    </message>
    <message>
        <source>bead %1</source>
        <translation>cordon %1</translation>
    </message>
    <message>
        <source>Lay a straight bead, measure and weigh it</source>
        <translation>Poser un cordon droit, le mesurer et le peser</translation>
    </message>
    <message>
        <source>Take this bead</source>
        <translation>Garder ce cordon</translation>
    </message>
    <message>
        <source>Bead by the calibration of %1: %2</source>
        <extracomment>%1 is a day, %2 a mass per length</extracomment>
        <translation>Cordon selon l’étalonnage du %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Bead by the sheet, not calibrated for this lot: %1</source>
        <translation>Cordon selon la fiche, ce lot n’est pas étalonné&#xa0;: %1</translation>
    </message>
    <message>
        <source>Bead by the sheet: %1</source>
        <translation>Cordon selon la fiche&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>CalibrateScreen</name>
    <message>
        <source>Outline of a card, 85.6 by 54 mm</source>
        <translation>Contour d’une carte, 85,6 sur 54&#xa0;mm</translation>
    </message>
    <message>
        <source>Bank, identity or driving card: all have this width</source>
        <translation>Carte bancaire, d’identité ou permis&#xa0;: toutes ont cette largeur</translation>
    </message>
    <message>
        <source>Make the outline as wide as a card</source>
        <translation>Régler le contour à la largeur d’une carte</translation>
    </message>
    <message>
        <source>The card covers it</source>
        <translation>La carte le couvre</translation>
    </message>
    <message>
        <source>wider</source>
        <translation>plus large</translation>
    </message>
    <message>
        <source>narrower</source>
        <translation>moins large</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Safety data sheets first.</source>
        <translation>D’abord les fiches de sécurité.</translation>
    </message>
    <message>
        <source>Old paint dust.</source>
        <translation>Poussière de vieille peinture.</translation>
    </message>
    <message>
        <source>Keep metal dusts apart.</source>
        <translation>Séparer les poussières métal.</translation>
    </message>
    <message>
        <source>Solvent burns.</source>
        <translation>Le solvant brûle.</translation>
    </message>
    <message>
        <source>Rags into the lidded metal can.</source>
        <translation>Chiffons dans le bidon métal fermé.</translation>
    </message>
    <message>
        <source>Acetone goes through thin gloves.</source>
        <translation>L’acétone traverse les gants minces.</translation>
    </message>
    <message>
        <source>No lamp, no grinder, no spark.</source>
        <translation>Ni lampe, ni meuleuse, ni étincelle.</translation>
    </message>
    <message>
        <source>Rotating tool.</source>
        <translation>Outil rotatif.</translation>
    </message>
    <message>
        <source>Goggles, dust mask.</source>
        <translation>Lunettes, masque poussière.</translation>
    </message>
    <message>
        <source>Extraction on, dust mask.</source>
        <translation>Aspiration, masque poussière.</translation>
    </message>
    <message>
        <source>Hot metal.</source>
        <translation>Métal chaud.</translation>
    </message>
    <message>
        <source>No heat on wet solvent.</source>
        <translation>Pas de chaleur : solvant frais.</translation>
    </message>
    <message>
        <source>Lay-up resin: its own catalyst.</source>
        <translation>Résine&#xa0;: son propre catalyseur.</translation>
    </message>
    <message>
        <source>Styrene vapour.</source>
        <translation>Vapeur de styrène.</translation>
    </message>
    <message>
        <source>Never at skin.</source>
        <translation>Jamais vers la peau.</translation>
    </message>
    <message>
        <source>Lamp before filling only.</source>
        <translation>Lampe&#xa0;: avant mastic seulement.</translation>
    </message>
    <message>
        <source>Fill within the hour.</source>
        <translation>Mastiquer dans l’heure.</translation>
    </message>
    <message>
        <source>Nothing goes back into the tub.</source>
        <translation>Rien ne retourne dans le pot.</translation>
    </message>
    <message>
        <source>What is left over gets hot.</source>
        <translation>Le reste de mélange chauffe.</translation>
    </message>
    <message>
        <source>The vehicle maker’s repair manual and local codes come before this program.</source>
        <translation>Le manuel du constructeur et les règles locales priment sur ce programme.</translation>
    </message>
    <message>
        <source>It may hold lead or chromate: test it, and extraction on before sanding.</source>
        <translation>Plomb ou chromate possibles : tester, et aspiration avant de poncer.</translation>
    </message>
    <message>
        <source>Aluminium and steel dust together can burn fiercely: own extractors.</source>
        <translation>Mêlées, poussières d’aluminium et d’acier peuvent brûler fort : aspirateurs séparés.</translation>
    </message>
    <message>
        <source>Fresh air; no flame, no hot lamp, no grinding near it.</source>
        <translation>Air frais&#xa0;; ni flamme, ni lampe chaude, ni meulage à proximité.</translation>
    </message>
    <message>
        <source>Solvent rags can catch fire; never into the bin.</source>
        <translation>Un chiffon à solvant peut s’enflammer&#xa0;; jamais à la poubelle.</translation>
    </message>
    <message>
        <source>Within minutes through thin nitrile: change them at once when wet.</source>
        <translation>En quelques minutes à travers le nitrile mince&#xa0;: changer dès que mouillés.</translation>
    </message>
    <message>
        <source>Wait until the vapour is gone, in the hollows too.</source>
        <translation>Attendre que la vapeur soit partie, dans les creux aussi.</translation>
    </message>
    <message>
        <source>Goggles, no loose sleeves; let it stop before you put it down.</source>
        <translation>Lunettes, pas de manches amples&#xa0;; attendre l’arrêt avant de poser.</translation>
    </message>
    <message>
        <source>Glass dust: extraction on first, sleeves closed.</source>
        <translation>Poussière de verre&#xa0;: d’abord l’aspiration, manches fermées.</translation>
    </message>
    <message>
        <source>Before the first stroke, not after.</source>
        <translation>Avant le premier passage, pas après.</translation>
    </message>
    <message>
        <source>Sparks fly: nothing that burns within reach, behind the panel too.</source>
        <translation>Étincelles&#xa0;: rien d’inflammable à portée, derrière le panneau non plus.</translation>
    </message>
    <message>
        <source>A lamp only after the solvent has flashed off.</source>
        <translation>Lampe seulement après évaporation du solvant.</translation>
    </message>
    <message>
        <source>Never cream hardener in it; never peroxide onto an accelerator.</source>
        <translation>Jamais de durcisseur en pâte&#xa0;; jamais de peroxyde sur accélérateur.</translation>
    </message>
    <message>
        <source>It burns, and harms hearing and the unborn child: extraction, and the mask its sheet names.</source>
        <translation>Elle brûle, nuit à l’ouïe et à l’enfant à naître : aspiration, et le masque de sa fiche.</translation>
    </message>
    <message>
        <source>Goggles and ear protection; guard others from chips.</source>
        <translation>Lunettes et antibruit&#xa0;; protéger les autres des projections.</translation>
    </message>
    <message>
        <source>A lamp warms the panel before filling, never wet filler.</source>
        <translation>La lampe chauffe le panneau avant, jamais le mastic frais.</translation>
    </message>
    <message>
        <source>Bare metal rusts or tarnishes: after an hour, abrade again.</source>
        <translation>Le métal nu rouille ou ternit&#xa0;: après une heure, reponcer.</translation>
    </message>
    <message>
        <source>It burns the eye and makes skin allergic; its safety data sheet says more.</source>
        <translation>Il brûle l’œil et rend la peau allergique&#xa0;; voir sa fiche de sécurité.</translation>
    </message>
    <message>
        <source>A trace of hardener sets the whole tub; close both.</source>
        <translation>Une trace de durcisseur fait prendre tout le pot&#xa0;; fermer les deux.</translation>
    </message>
    <message>
        <source>Spread it thin on metal or put it under water, never into the bin.</source>
        <translation>L’étaler mince sur métal ou le noyer, jamais à la poubelle.</translation>
    </message>
    <message>
        <source>Peroxide: goggles, gloves.</source>
        <translation>Peroxyde : lunettes, gants.</translation>
    </message>
    <message>
        <source>In the eye: rinse, doctor.</source>
        <translation>Dans l’œil : rincer, médecin.</translation>
    </message>
    <message>
        <source>At once and long, lids held open; its data sheet goes along.</source>
        <translation>Aussitôt et longtemps, paupières ouvertes ; emporter sa fiche.</translation>
    </message>
</context>
<context>
    <name>Consequences</name>
    <message>
        <source>It would be filled where it must stop: %1.</source>
        <translation>On mastiquerait là où il faut arrêter&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It would stop for nothing: %1.</source>
        <translation>On arrêterait pour rien&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It would be put right for the wrong reason: %1, not: %2.</source>
        <translation>On corrigerait pour la mauvaise raison&#xa0;: %1, et non&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Another filler would go in: %1, not %2.</source>
        <translation>Un autre mastic serait mis&#xa0;: %1, pas %2.</translation>
    </message>
    <message>
        <source>%1 would be mixed, not %2.</source>
        <translation>On mélangerait %1, pas %2.</translation>
    </message>
    <message>
        <source>%1 of crack would stay, undrilled, and run on.</source>
        <translation>%1 de fissure resteraient, non percés, et fileraient.</translation>
    </message>
    <message>
        <source>The plan would be the same; the record would be wrong.</source>
        <translation>Le plan serait le même&#xa0;; l’historique serait faux.</translation>
    </message>
    <message>
        <source>It would lack: %1.</source>
        <translation>Il manquerait&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Work for nothing: %1.</source>
        <translation>Travail pour rien&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It spoils the bond or the panel: %1.</source>
        <translation>Cela gâche l’adhérence ou le panneau&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1: that comes before: %2.</source>
        <translation>%1&#xa0;: cela vient avant&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The panel is only %1 above dew point, not %2: unseen dew, and no adhesion.</source>
        <translation>Marge de rosée %1 seulement, pas %2&#xa0;: rosée invisible, aucune adhérence.</translation>
    </message>
    <message>
        <source>Filler would hide it: %1.</source>
        <translation>Le mastic le cacherait&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A panel that could be filled would wait.</source>
        <translation>Un panneau bon à mastiquer attendrait.</translation>
    </message>
    <message>
        <source>It would still stand in the way: %1.</source>
        <translation>Cela ferait encore obstacle&#xa0;: %1.</translation>
    </message>
    <message>
        <source>That does not put it right: %1.</source>
        <translation>Cela ne corrige rien&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 does not belong here: %2.</source>
        <translation>%1 n’a pas sa place ici&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 in one go reaches %2, above %3: it shrinks as it cools, and maps through.</source>
        <translation>%1 d’un coup monte à %2, plus de %3&#xa0;: il se rétracte en refroidissant et se marque.</translation>
    </message>
    <message>
        <source>%1 in one go; its sheet ends at %2: it shrinks and maps.</source>
        <translation>%1 d’un coup&#xa0;; sa fiche s’arrête à %2&#xa0;: il se rétracte et se marque.</translation>
    </message>
    <message>
        <source>Nothing was laid: the damage is as it was.</source>
        <translation>Rien n’a été posé&#xa0;: le dommage reste tel quel.</translation>
    </message>
    <message>
        <source>The face stays %1 too low.</source>
        <translation>La face reste trop basse de %1.</translation>
    </message>
    <message>
        <source>The face stands %1 too high, all of it to sand off.</source>
        <translation>La face est trop haute de %1, tout est à poncer.</translation>
    </message>
    <message>
        <source>%1 are missing: the next batch meets a cold joint.</source>
        <translation>Il manque %1&#xa0;: le mélange suivant fait une reprise froide.</translation>
    </message>
    <message>
        <source>%1 are left over, and wasted.</source>
        <translation>Il reste %1, perdus.</translation>
    </message>
    <message>
        <source>The board gels after %1: %2 are wasted on it.</source>
        <translation>La palette prend après %1&#xa0;: %2 y sont perdus.</translation>
    </message>
    <message>
        <source>It sands after %1, not after %2.</source>
        <translation>Il se ponce après %1, pas après %2.</translation>
    </message>
    <message>
        <source>It gels after %1, not after %2.</source>
        <translation>Il prend après %1, pas après %2.</translation>
    </message>
    <message>
        <source>With %1 hardener it never cures hard enough to sand.</source>
        <translation>Avec %1 de durcisseur, il ne durcit jamais assez pour poncer.</translation>
    </message>
    <message>
        <source>%1 hardener: no sheet and no model goes there.</source>
        <translation>%1 de durcisseur&#xa0;: ni fiche ni modèle ne va jusque-là.</translation>
    </message>
    <message>
        <source>The edges gel at %1: the repair grows, and must be ground back.</source>
        <translation>Les bords prennent à %1&#xa0;: la réparation grandit, il faut la meuler.</translation>
    </message>
    <message>
        <source>Before %1 it still flows: the edges smear again.</source>
        <translation>Avant %1 il coule encore&#xa0;: les bords bavent à nouveau.</translation>
    </message>
    <message>
        <source>Only %1 cured at the face, not %2: it drags and clogs until %3.</source>
        <translation>Durci à %1 seulement en surface, pas à %2&#xa0;: il tire et encrasse jusqu’à %3.</translation>
    </message>
    <message>
        <source>After %1 it is hard as stone: the paper hardly bites.</source>
        <translation>Après %1 il est dur comme pierre&#xa0;: le papier mord à peine.</translation>
    </message>
    <message>
        <source>It was not sanded: nothing holds on it.</source>
        <translation>Il n’a pas été poncé&#xa0;: rien n’y tient.</translation>
    </message>
    <message>
        <source>The other face stays open: water gets in, and it breaks out.</source>
        <translation>L’autre face reste ouverte&#xa0;: l’eau entre, et il se détache.</translation>
    </message>
    <message>
        <source>There is nothing to fill on the other face.</source>
        <translation>Il n’y a rien à mastiquer sur l’autre face.</translation>
    </message>
    <message>
        <source>A coat of %1 sinks and pinholes; at most %2.</source>
        <translation>Une couche de %1 se creuse et se pique ; au plus %2.</translation>
    </message>
    <message>
        <source>%1 of finishing filler in all; it cracks beyond %2.</source>
        <translation>%1 de mastic de finition en tout&#xa0;; il fissure au-delà de %2.</translation>
    </message>
    <message>
        <source>It stays %1 below the contour.</source>
        <translation>Il reste %1 sous le galbe.</translation>
    </message>
    <message>
        <source>It was not finished: strands show through primer.</source>
        <translation>Pas de finition&#xa0;: les fibres se voient sous l’apprêt.</translation>
    </message>
    <message>
        <source>It goes to paint unseen: %1.</source>
        <translation>Part en peinture non vérifié&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Primed %1 too soon: what cures below shrinks, and maps.</source>
        <translation>Apprêté %1 trop tôt&#xa0;: ce qui durcit dessous se rétracte et se marque.</translation>
    </message>
    <message>
        <source>By its product sheet: below %2 the film stays soft.</source>
        <extracomment>%1 is the share of hardener mixed, %2 the least</extracomment>
        <translation>D’après sa fiche&#xa0;: sous %2 le film reste mou.</translation>
    </message>
    <message>
        <source>By its product sheet: above %2 it bleeds and pinholes.</source>
        <extracomment>%1 is the share of hardener mixed, %2 the most</extracomment>
        <translation>D’après sa fiche : au-delà de %2 il ressue et se pique.</translation>
    </message>
    <message>
        <source>It is damp: the filler does not hold on water.</source>
        <translation>C’est humide&#xa0;: le mastic ne tient pas sur l’eau.</translation>
    </message>
    <message>
        <source>At %1 the panel is colder than %2: it does not hold, nor cure through.</source>
        <extracomment>%1 is the panel&apos;s temperature, %2 the least</extracomment>
        <translation>À %1, le panneau est plus froid que %2&#xa0;: cela ne tient ni ne durcit à cœur.</translation>
    </message>
</context>
<context>
    <name>Deviations</name>
    <message>
        <source>panel %1 above dew point; at least %2</source>
        <translation>marge de rosée %1&#xa0;; au moins %2</translation>
    </message>
    <message>
        <source>panel at %1; at least %2</source>
        <translation>panneau à %1&#xa0;; au moins %2</translation>
    </message>
    <message>
        <source>panel at %1; at most %2</source>
        <translation>panneau à %1&#xa0;; au plus %2</translation>
    </message>
    <message>
        <source>air at %1; at least %2</source>
        <translation>air à %1&#xa0;; au moins %2</translation>
    </message>
    <message>
        <source>air at %1; at most %2</source>
        <translation>air à %1&#xa0;; au plus %2</translation>
    </message>
    <message>
        <source>no reading before the hardener went in</source>
        <translation>aucune mesure avant le durcisseur</translation>
    </message>
    <message>
        <source>last reading %1 old; at most %2</source>
        <translation>dernière mesure il y a %1&#xa0;; au plus %2</translation>
    </message>
    <message>
        <source>bare metal filled after %1; at most %2</source>
        <translation>métal nu mastiqué après %1&#xa0;; au plus %2</translation>
    </message>
    <message>
        <source>sands after %1; predicted %2</source>
        <translation>ponçable après %1&#xa0;; prévu %2</translation>
    </message>
    <message>
        <source>edges clear after %1; gel predicted at %2</source>
        <translation>bords dégagés après %1&#xa0;; prise prévue à %2</translation>
    </message>
    <message>
        <source>edges clear after %1; gel seen at %2</source>
        <translation>bords dégagés après %1&#xa0;; prise vue à %2</translation>
    </message>
    <message>
        <source>hardener %1; at least %2</source>
        <translation>durcisseur %1&#xa0;; au moins %2</translation>
    </message>
    <message>
        <source>hardener %1; at most %2</source>
        <translation>durcisseur %1&#xa0;; au plus %2</translation>
    </message>
    <message>
        <source>lot of the filler not told</source>
        <translation>lot du mastic non indiqué</translation>
    </message>
    <message>
        <source>lot of the hardener not told</source>
        <translation>lot du durcisseur non indiqué</translation>
    </message>
    <message>
        <source>mixed by a demo sheet: %1</source>
        <extracomment>%1 is the sheet&apos;s id</extracomment>
        <translation>mélangé selon fiche de démo&#xa0;: %1</translation>
    </message>
    <message>
        <source>changed after the plan: %1</source>
        <extracomment>%1 is a question: &quot;dry or damp&quot;</extracomment>
        <translation>modifié après le plan&#xa0;: %1</translation>
    </message>
    <message>
        <source>planned again: plan %1</source>
        <extracomment>%1 is the number of the plan</extracomment>
        <translation>replanifié&#xa0;: plan %1</translation>
    </message>
    <message>
        <source>parked: %1</source>
        <extracomment>%1 is where: &quot;to the supervisor&quot;</extracomment>
        <translation>en attente&#xa0;: %1</translation>
    </message>
    <message>
        <source>no photo: %1</source>
        <extracomment>%1 is a moment: &quot;as found&quot;</extracomment>
        <translation>sans photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>acts without a name: %1</source>
        <translation>actions sans nom&#xa0;: %1</translation>
    </message>
    <message>
        <source>bench started again while a mix ran; %1 between two acts</source>
        <translation>poste relancé pendant un mélange&#xa0;; %1 entre deux actions</translation>
    </message>
    <message>
        <source>clock set forward by %1 while a mix ran</source>
        <translation>horloge avancée de %1 pendant un mélange</translation>
    </message>
    <message>
        <source>clock set back by %1 while a mix ran</source>
        <translation>horloge reculée de %1 pendant un mélange</translation>
    </message>
    <message>
        <source>no deviations</source>
        <translation>aucun écart</translation>
    </message>
    <message numerus="yes">
        <source>%n deviation(s)</source>
        <translation>
            <numerusform>%n écart</numerusform>
            <numerusform>%n écarts</numerusform>
        </translation>
    </message>
    <message>
        <source>overridden: %1. Reason: %2</source>
        <extracomment>%1 is a stop, %2 a reason: &quot;Damp&quot;, &quot;Proved by another test&quot;</extracomment>
        <translation>dérogation : %1. Motif : %2</translation>
    </message>
    <message>
        <source>laid %1 thick by its mass; at most %2 in one go</source>
        <translation>posé sur %1 d’après sa masse&#xa0;; au plus %2 en une fois</translation>
    </message>
    <message>
        <source>steps told as done almost at once: %1, in %2; planned %3</source>
        <extracomment>%1 is a number of steps, %2 and %3 are times</extracomment>
        <translation>étapes données pour faites presque d’un coup&#xa0;: %1, en %2&#xa0;; prévu %3</translation>
    </message>
    <message>
        <source>wait cut short, %1: %2; it needs %3</source>
        <extracomment>%1 is a step</extracomment>
        <translation>attente écourtée, %1&#xa0;: %2&#xa0;; il faut %3</translation>
    </message>
</context>
<context>
    <name>Events</name>
    <message>
        <source>air %1, panel %2, humidity %3</source>
        <translation>air %1, panneau %2, humidité %3</translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>profond de %1</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>panneau %1</translation>
    </message>
    <message>
        <source>bevel %1 : 1</source>
        <translation>chanfrein %1&#xa0;: 1</translation>
    </message>
    <message>
        <source>Taken in: %1, %2</source>
        <translation>Entré&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Changed. %1</source>
        <extracomment>%1 is an answer: &quot;Dry or damp: damp&quot;</extracomment>
        <translation>Modifié. %1</translation>
    </message>
    <message>
        <source>Planned again: %1, %2, %3</source>
        <translation>Replanifié&#xa0;: %1, %2, %3</translation>
    </message>
    <message>
        <source>Plan accepted: %1, %2, %3</source>
        <translation>Plan accepté&#xa0;: %1, %2, %3</translation>
    </message>
    <message>
        <source>Read: %1; panel %2 above dew point</source>
        <translation>Mesuré&#xa0;: %1&#xa0;; marge de rosée %2</translation>
    </message>
    <message>
        <source>%1: hardener in, %2 + %3</source>
        <translation>%1&#xa0;: durcisseur mis, %2 + %3</translation>
    </message>
    <message>
        <source>%1: edges clear after %2</source>
        <translation>%1&#xa0;: bords dégagés après %2</translation>
    </message>
    <message>
        <source>%1: set on the board after %2</source>
        <translation>%1&#xa0;: pris sur la palette après %2</translation>
    </message>
    <message>
        <source>%1: set on the panel after %2</source>
        <translation>%1&#xa0;: pris sur le panneau après %2</translation>
    </message>
    <message>
        <source>%1: sands after %2</source>
        <translation>%1&#xa0;: ponçable après %2</translation>
    </message>
    <message>
        <source>%1: sanded and dusted off</source>
        <translation>%1&#xa0;: poncé et dépoussiéré</translation>
    </message>
    <message>
        <source>Panel turned</source>
        <translation>Panneau retourné</translation>
    </message>
    <message>
        <source>Parked: %1</source>
        <translation>En attente&#xa0;: %1</translation>
    </message>
    <message>
        <source>Parked: %1. %2</source>
        <translation>En attente&#xa0;: %1. %2</translation>
    </message>
    <message>
        <source>Assessed again from the first question</source>
        <translation>Réévalué dès la première question</translation>
    </message>
    <message>
        <source>Taken up again</source>
        <translation>Repris</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message>
        <source>Photo: %1</source>
        <translation>Photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Note&#xa0;: %1</translation>
    </message>
    <message>
        <source>Finishing batch %1</source>
        <translation>Mélange de finition %1</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Mélange %1</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>%1: by this reading sands from %2, before from %3</source>
        <translation>%1 : d’après cette mesure ponçable dès %2 (avant : dès %3)</translation>
    </message>
    <message>
        <source>%1: alarm answered: %2</source>
        <translation>%1 : alarme acquittée : %2</translation>
    </message>
    <message>
        <source>Overridden by the supervisor: %1. Reason: %2</source>
        <translation>Dérogation du chef d’atelier : %1. Motif : %2</translation>
    </message>
    <message>
        <source>Signed off by the supervisor</source>
        <translation>Visé par le chef d’atelier</translation>
    </message>
    <message>
        <source>Correction of no. %1: %2</source>
        <extracomment>%1 is the number of the event that is put right, %2 what the supervisor wrote</extracomment>
        <translation>Correction du n° %1 : %2</translation>
    </message>
    <message>
        <source>Changed. %1 (air by the instrument)</source>
        <translation>Modifié. %1 (air par l’instrument)</translation>
    </message>
    <message>
        <source>%1 (air by the instrument)</source>
        <translation>%1 (air par l’instrument)</translation>
    </message>
    <message>
        <source>Read, air by the instrument: %1; panel %2 above dew point</source>
        <translation>Mesuré, air par l’instrument : %1 ; marge de rosée %2</translation>
    </message>
    <message>
        <source>%1: hardener in, %2 + %3 by the scale</source>
        <translation>%1&#xa0;: durcisseur mis, %2 + %3 à la balance</translation>
    </message>
    <message>
        <source>Taken in as rework of what was returned: %1, %2</source>
        <translation>Entré comme reprise d’un travail renvoyé : %1, %2</translation>
    </message>
    <message>
        <source>Returned by the supervisor: %1</source>
        <extracomment>%1 is the reason</extracomment>
        <translation>Renvoyé par le chef d’atelier&#xa0;: %1</translation>
    </message>
    <message>
        <source>Its rework is taken in</source>
        <translation>Sa reprise est entrée</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>From the front</source>
        <translation>De face</translation>
    </message>
    <message>
        <source>From behind</source>
        <translation>De derrière</translation>
    </message>
    <message>
        <source>Broken edge</source>
        <translation>Bord cassé</translation>
    </message>
    <message>
        <source>Magnet</source>
        <translation>Aimant</translation>
    </message>
    <message>
        <source>Zinc gauge</source>
        <translation>Jauge de zinc</translation>
    </message>
    <message>
        <source>Ohmmeter</source>
        <translation>Ohmmètre</translation>
    </message>
    <message>
        <source>Tap it</source>
        <translation>Tapoter</translation>
    </message>
    <message>
        <source>80 grit, a spot</source>
        <translation>Grain 80, un point</translation>
    </message>
    <message>
        <source>Bend the edge</source>
        <translation>Plier le bord</translation>
    </message>
    <message>
        <source>Drop of vinegar</source>
        <translation>Goutte de vinaigre</translation>
    </message>
    <message>
        <source>Cloth and solvent</source>
        <translation>Chiffon et solvant</translation>
    </message>
    <message>
        <source>Nail in film</source>
        <translation>Ongle dans le film</translation>
    </message>
    <message>
        <source>Tap and wet</source>
        <translation>Tapoter et mouiller</translation>
    </message>
    <message>
        <source>Nail in adhesive</source>
        <translation>Ongle dans la colle</translation>
    </message>
    <message>
        <source>Taped foil</source>
        <translation>Film scotché</translation>
    </message>
    <message>
        <source>What is near</source>
        <translation>À proximité</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Air and panel</source>
        <translation>Air et panneau</translation>
    </message>
    <message>
        <source>Since when bare</source>
        <translation>À nu depuis</translation>
    </message>
    <message>
        <source>a crack</source>
        <translation>une fissure</translation>
    </message>
    <message>
        <source>fine crazing in the paint</source>
        <translation>fin faïençage dans la peinture</translation>
    </message>
    <message>
        <source>a dish pressed in</source>
        <translation>un creux enfoncé</translation>
    </message>
    <message>
        <source>a furrow</source>
        <translation>un sillon</translation>
    </message>
    <message>
        <source>a hole right through</source>
        <translation>un trou traversant</translation>
    </message>
    <message>
        <source>a hole with a brown, flaking rim</source>
        <translation>un trou au bord brun qui s’écaille</translation>
    </message>
    <message>
        <source>an unbroken weld bead</source>
        <translation>un cordon de soudure continu</translation>
    </message>
    <message>
        <source>a row of round pressed spots</source>
        <translation>une rangée de points ronds enfoncés</translation>
    </message>
    <message>
        <source>the line of a seam</source>
        <translation>la ligne d’un joint</translation>
    </message>
    <message>
        <source>a line of adhesive</source>
        <translation>une ligne de colle</translation>
    </message>
    <message>
        <source>adhesive squeezed out</source>
        <translation>colle qui déborde</translation>
    </message>
    <message>
        <source>pores in the bead</source>
        <translation>pores dans le cordon</translation>
    </message>
    <message>
        <source>brown specks on bright metal</source>
        <translation>points bruns sur métal brillant</translation>
    </message>
    <message>
        <source>nothing on it</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>even grey film, abraded</source>
        <translation>film gris uniforme, poncé</translation>
    </message>
    <message>
        <source>glossy film</source>
        <translation>film brillant</translation>
    </message>
    <message>
        <source>a patch of another colour in the film</source>
        <translation>une plaque d’une autre couleur dans le film</translation>
    </message>
    <message>
        <source>thick rubbery film</source>
        <translation>film épais comme du caoutchouc</translation>
    </message>
    <message>
        <source>brown scale</source>
        <translation>croûte brune</translation>
    </message>
    <message>
        <source>smooth black film</source>
        <translation>film noir lisse</translation>
    </message>
    <message>
        <source>thin tinted film, metal shows through</source>
        <translation>film mince teinté, le métal transparaît</translation>
    </message>
    <message>
        <source>glassy drops along the joint</source>
        <translation>gouttes vitreuses le long du joint</translation>
    </message>
    <message>
        <source>A hand gets behind it.</source>
        <translation>La main passe derrière.</translation>
    </message>
    <message>
        <source>Only a mirror gets behind it.</source>
        <translation>Seul un miroir passe derrière.</translation>
    </message>
    <message>
        <source>The back is closed: nothing is seen.</source>
        <translation>Le dos est fermé&#xa0;: on ne voit rien.</translation>
    </message>
    <message>
        <source>rough, strands every way</source>
        <translation>rugueux, brins en tous sens</translation>
    </message>
    <message>
        <source>smooth, with moulded ribs</source>
        <translation>lisse, avec nervures moulées</translation>
    </message>
    <message>
        <source>black woven cloth</source>
        <translation>tissu noir</translation>
    </message>
    <message>
        <source>thin pressed sheet</source>
        <translation>tôle mince emboutie</translation>
    </message>
    <message>
        <source>thick cast ribs</source>
        <translation>nervures épaisses coulées</translation>
    </message>
    <message>
        <source>short weld beads with gaps</source>
        <translation>cordons courts espacés</translation>
    </message>
    <message>
        <source>Marked: UP-GF</source>
        <extracomment>what is moulded into the back of a part, an abbreviation of ISO 1043</extracomment>
        <translation>Marqué&#xa0;: UP-GF</translation>
    </message>
    <message>
        <source>Marked: PP-EPDM</source>
        <translation>Marqué&#xa0;: PP-EPDM</translation>
    </message>
    <message>
        <source>Marked: PUR</source>
        <translation>Marqué&#xa0;: PUR</translation>
    </message>
    <message>
        <source>Marked: PDCPD</source>
        <translation>Marqué&#xa0;: PDCPD</translation>
    </message>
    <message>
        <source>Marked: Mg</source>
        <translation>Marqué&#xa0;: Mg</translation>
    </message>
    <message>
        <source>layers, long strands stand out</source>
        <translation>couches, de longs brins dépassent</translation>
    </message>
    <message>
        <source>short strands, evenly all through</source>
        <translation>brins courts, répartis partout</translation>
    </message>
    <message>
        <source>no strand anywhere</source>
        <translation>aucun brin</translation>
    </message>
    <message>
        <source>black woven threads</source>
        <translation>fils noirs tissés</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>métal</translation>
    </message>
    <message>
        <source>Solid all through.</source>
        <translation>Plein de part en part.</translation>
    </message>
    <message>
        <source>Between two skins: small cells.</source>
        <translation>Entre deux peaux&#xa0;: de petites cellules.</translation>
    </message>
    <message>
        <source>Between two skins: pale dry wood.</source>
        <translation>Entre deux peaux&#xa0;: bois clair et sec.</translation>
    </message>
    <message>
        <source>Between two skins: dark wood, wet to the finger.</source>
        <translation>Entre deux peaux&#xa0;: bois sombre, mouillé au doigt.</translation>
    </message>
    <message>
        <source>no pull</source>
        <translation>n’attire pas</translation>
    </message>
    <message>
        <source>weak pull</source>
        <translation>attire faiblement</translation>
    </message>
    <message>
        <source>strong pull</source>
        <translation>attire fort</translation>
    </message>
    <message>
        <source>It rings.</source>
        <translation>Ça sonne clair.</translation>
    </message>
    <message>
        <source>A hard, short sound.</source>
        <translation>Un son dur et bref.</translation>
    </message>
    <message>
        <source>A dull sound.</source>
        <translation>Un son sourd.</translation>
    </message>
    <message>
        <source>Dead: no sound of its own.</source>
        <translation>Mort&#xa0;: aucun son propre.</translation>
    </message>
    <message>
        <source>It gives dry powder.</source>
        <translation>Cela donne une poudre sèche.</translation>
    </message>
    <message>
        <source>It smears and gives strings.</source>
        <translation>Cela bave et fait des fils.</translation>
    </message>
    <message>
        <source>It gives soft crumbs.</source>
        <translation>Cela donne des miettes molles.</translation>
    </message>
    <message>
        <source>It gives black dust.</source>
        <translation>Cela donne une poussière noire.</translation>
    </message>
    <message>
        <source>Bright metal comes up.</source>
        <translation>Le métal brillant apparaît.</translation>
    </message>
    <message>
        <source>The cloth stays clean.</source>
        <translation>Le chiffon reste propre.</translation>
    </message>
    <message>
        <source>The cloth takes colour.</source>
        <translation>Le chiffon prend de la couleur.</translation>
    </message>
    <message>
        <source>The film softens and smears.</source>
        <translation>Le film ramollit et bave.</translation>
    </message>
    <message>
        <source>Hard: the nail slides off.</source>
        <translation>Dur&#xa0;: l’ongle glisse.</translation>
    </message>
    <message>
        <source>Rubbery: the nail springs back.</source>
        <translation>Caoutchouteux&#xa0;: l’ongle rebondit.</translation>
    </message>
    <message>
        <source>Soft: the nail goes in and stays.</source>
        <translation>Mou&#xa0;: l’ongle entre et reste.</translation>
    </message>
    <message>
        <source>Dry below the foil.</source>
        <translation>Sec sous le film.</translation>
    </message>
    <message>
        <source>Beads of water below the foil.</source>
        <translation>Gouttes d’eau sous le film.</translation>
    </message>
    <message>
        <source>pillar</source>
        <translation>montant</translation>
    </message>
    <message>
        <source>chassis rail</source>
        <translation>longeron</translation>
    </message>
    <message>
        <source>brake mounting</source>
        <translation>fixation de frein</translation>
    </message>
    <message>
        <source>steering mounting</source>
        <translation>fixation de direction</translation>
    </message>
    <message>
        <source>suspension mounting</source>
        <translation>fixation de suspension</translation>
    </message>
    <message>
        <source>belt mounting</source>
        <translation>ancrage de ceinture</translation>
    </message>
    <message>
        <source>seat mounting</source>
        <translation>fixation de siège</translation>
    </message>
    <message>
        <source>flange that glass is bonded to</source>
        <translation>feuillure où le vitrage est collé</translation>
    </message>
    <message>
        <source>airbag cover</source>
        <translation>cache d’airbag</translation>
    </message>
    <message>
        <source>high-voltage part, orange cable</source>
        <translation>pièce haute tension, câble orange</translation>
    </message>
    <message>
        <source>driver-assistance sensor behind it</source>
        <translation>capteur d’assistance derrière</translation>
    </message>
    <message>
        <source>wall of a tank</source>
        <translation>paroi d’un réservoir</translation>
    </message>
    <message>
        <source>It cannot be tried here.</source>
        <translation>Cela ne peut pas s’essayer ici.</translation>
    </message>
    <message>
        <source>On it: %1.</source>
        <translation>Dessus&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Seen: %1. On it: %2.</source>
        <extracomment>both are lists: &quot;a crack, fine crazing in the paint&quot;, &quot;glossy film&quot;</extracomment>
        <translation>On voit&#xa0;: %1. Dessus&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>On voit&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No edge is broken or cut open.</source>
        <translation>Aucun bord n’est cassé ni coupé.</translation>
    </message>
    <message>
        <source>At the damage: %1.</source>
        <translation>Au dommage&#xa0;: %1.</translation>
    </message>
    <message>
        <source>At the damage: %1. On a spot ground bare: %2.</source>
        <translation>Au dommage&#xa0;: %1. Sur un point mis à nu&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 µm</source>
        <extracomment>a thickness: &quot;12 µm&quot;</extracomment>
        <translation>%1&#xa0;µm</translation>
    </message>
    <message>
        <source>Beside it: %1.</source>
        <translation>À côté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Nothing but skin within an arm’s length.</source>
        <translation>Rien que de l’habillage à portée de bras.</translation>
    </message>
    <message>
        <source>%1, %2 away</source>
        <extracomment>%1 is a part of a vehicle, %2 how far off: &quot;belt mounting, 120 mm away&quot;</extracomment>
        <translation>%1, à %2</translation>
    </message>
    <message>
        <source>%1, right here</source>
        <translation>%1, ici même</translation>
    </message>
    <message>
        <source>Long, as the eye has it: %1.</source>
        <translation>Longueur, à l’œil : %1.</translation>
    </message>
    <message>
        <source>Wide: %1.</source>
        <translation>Largeur : %1.</translation>
    </message>
    <message>
        <source>Deep: %1.</source>
        <translation>Profondeur : %1.</translation>
    </message>
    <message>
        <source>Panel: %1.</source>
        <translation>Panneau&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It conducts.</source>
        <translation>Il conduit.</translation>
    </message>
    <message>
        <source>Open: it does not conduct.</source>
        <translation>Ouvert&#xa0;: il ne conduit pas.</translation>
    </message>
    <message>
        <source>It bends by hand and springs back.</source>
        <translation>Il plie à la main et revient.</translation>
    </message>
    <message>
        <source>It stays stiff.</source>
        <translation>Il reste raide.</translation>
    </message>
    <message>
        <source>It fizzes.</source>
        <translation>Ça pétille.</translation>
    </message>
    <message>
        <source>Nothing happens.</source>
        <translation>Rien ne se passe.</translation>
    </message>
    <message>
        <source>The nail leaves a mark.</source>
        <translation>L’ongle laisse une marque.</translation>
    </message>
    <message>
        <source>The nail leaves no mark.</source>
        <translation>L’ongle ne laisse pas de marque.</translation>
    </message>
    <message>
        <source>From tip to tip: %1.</source>
        <translation>De pointe à pointe : %1.</translation>
    </message>
    <message>
        <source>No crack opens.</source>
        <translation>Aucune fissure ne s’ouvre.</translation>
    </message>
    <message>
        <source>Cut or ground bare %1 ago.</source>
        <translation>Coupé ou mis à nu il y a %1.</translation>
    </message>
    <message>
        <source>Nobody knows.</source>
        <translation>Personne ne le sait.</translation>
    </message>
    <message>
        <source>Bevel to cut: %1 : 1.</source>
        <extracomment>run to depth, told by the shop: &quot;Bevel to cut: 4 : 1.&quot;</extracomment>
        <translation>Chanfrein à faire&#xa0;: %1&#xa0;: 1.</translation>
    </message>
</context>
<context>
    <name>Faults</name>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un nombre entier</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texte</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objet</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>une liste</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>vrai ou faux</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>un fichier</translation>
    </message>
    <message>
        <source>Job number</source>
        <translation>N° de dossier</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panneau</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Panel’s material</source>
        <translation>Matière du panneau</translation>
    </message>
    <message>
        <source>Damage</source>
        <translation>Dommage</translation>
    </message>
    <message>
        <source>Kind of damage</source>
        <translation>Type de dommage</translation>
    </message>
    <message>
        <source>Kind of weld</source>
        <translation>Type de soudure</translation>
    </message>
    <message>
        <source>Adhesive cured</source>
        <translation>Colle durcie</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Panel thickness</source>
        <translation>Épaisseur du panneau</translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation>Chanfrein</translation>
    </message>
    <message>
        <source>Reach from behind</source>
        <translation>Accès par derrière</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Sec/humide</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Âme</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Température de l’air</translation>
    </message>
    <message>
        <source>Panel temperature</source>
        <translation>Température du panneau</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Mastic</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>Puddle</source>
        <translation>Galette</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Carte</translation>
    </message>
    <message>
        <source>%1: missing</source>
        <translation>%1&#xa0;: manque</translation>
    </message>
    <message>
        <source>%1: missing; it must be one of: %2</source>
        <translation>%1&#xa0;: manque&#xa0;; il faut une valeur parmi&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: missing; it must be %2</source>
        <translation>%1&#xa0;: manque&#xa0;; il faut %2</translation>
    </message>
    <message>
        <source>%1: %2 is out of range; allowed is %3 to %4</source>
        <translation>%1&#xa0;: %2 hors limites&#xa0;; admis de %3 à %4</translation>
    </message>
    <message>
        <source>%1: not known; known here: %2</source>
        <translation>%1&#xa0;: inconnu&#xa0;; connus ici&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 does not fit; it must be %3</source>
        <translation>%1&#xa0;: %2 ne convient pas&#xa0;; il faut %3</translation>
    </message>
    <message>
        <source>%1: %2 is not one of: %3</source>
        <translation>%1&#xa0;: %2 n’est pas parmi&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1: %2 cannot be read; it looks like: %3</source>
        <translation>%1&#xa0;: %2 illisible&#xa0;; forme attendue&#xa0;: %3</translation>
    </message>
    <message>
        <source>%1: must not be empty</source>
        <translation>%1&#xa0;: ne doit pas être vide</translation>
    </message>
    <message>
        <source>%1: %2 is too long; at most %3 characters</source>
        <translation>%1&#xa0;: %2 est trop long&#xa0;; %3 caractères au plus</translation>
    </message>
    <message>
        <source>%1: %2 does not agree with %3: %4</source>
        <translation>%1&#xa0;: %2 ne s’accorde pas avec %3&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1: %2 is not there; there is: %3</source>
        <translation>%1&#xa0;: %2 n’y est pas&#xa0;; il y a&#xa0;: %3</translation>
    </message>
    <message>
        <source>Bead</source>
        <translation>Cordon</translation>
    </message>
</context>
<context>
    <name>FigureChart</name>
    <message>
        <source>planned</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>Not identified</source>
        <translation>Non identifié</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>&quot;9 of 12&quot;</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>took</source>
        <translation>réel</translation>
    </message>
    <message>
        <source>how often</source>
        <translation>combien de fois</translation>
    </message>
    <message>
        <source>share up to here</source>
        <translation>part jusqu’ici</translation>
    </message>
    <message>
        <source>Step from each gel to the next, with its limit</source>
        <translation>Saut de prise en prise, avec sa limite</translation>
    </message>
    <message>
        <source>Gel times over those of the sheet, one after the other, with mean, limits and moving mean</source>
        <translation>Temps de prise rapportés à ceux de la fiche, l’un après l’autre, avec moyenne, limites et moyenne mobile</translation>
    </message>
    <message numerus="yes">
        <source>+%n in the table</source>
        <translation>
            <numerusform>+%n dans le tableau</numerusform>
            <numerusform>+%n dans le tableau</numerusform>
        </translation>
    </message>
    <message>
        <source>mean</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>limite haute</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>limite basse</translation>
    </message>
    <message>
        <source>moving mean</source>
        <translation>moyenne mobile</translation>
    </message>
    <message>
        <source>its limit</source>
        <translation>sa limite</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>not by chance alone</source>
        <translation>pas par le seul hasard</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mélangé</translation>
    </message>
    <message>
        <source>%1 too much</source>
        <extracomment>%1 is a share of what was mixed</extracomment>
        <translation>%1 en trop</translation>
    </message>
    <message>
        <source>share, and where the true one may lie</source>
        <translation>part, et où peut être la vraie</translation>
    </message>
</context>
<context>
    <name>FigureTable</name>
    <message>
        <source>Marked in the chart</source>
        <translation>Marqué sur le graphique</translation>
    </message>
</context>
<context>
    <name>FigureTold</name>
    <message>
        <source>Nothing was mixed in these days.</source>
        <translation>Rien n’a été mélangé pendant ces jours.</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>prévu %1</translation>
    </message>
    <message>
        <source>mixed %1</source>
        <translation>mélangé %1</translation>
    </message>
    <message>
        <source>beyond the plan %1, %2</source>
        <translation>en trop %1, %2</translation>
    </message>
    <message>
        <source>Of %1 mixed, %2 went beyond the plan: %3. Most of that was %4.</source>
        <extracomment>%1 and %2 are masses, %3 a share, %4 a product</extracomment>
        <translation>Sur %1 mélangés, %2 étaient en trop&#xa0;: %3. C’était surtout %4.</translation>
    </message>
    <message>
        <source>Of %1 mixed, nothing went beyond the plan.</source>
        <translation>Sur %1 mélangés, rien n’était en trop.</translation>
    </message>
    <message>
        <source>Other batches fell short of it by %1.</source>
        <translation>À d’autres mélanges, il manquait %1.</translation>
    </message>
    <message>
        <source>Between the substrates no difference is larger than chance.</source>
        <translation>Entre les supports, aucune différence ne dépasse le hasard.</translation>
    </message>
    <message>
        <source>not identified</source>
        <translation>non identifié</translation>
    </message>
    <message>
        <source>Less often with %1 than with %2, by more than chance.</source>
        <extracomment>%1 and %2 are substrates</extracomment>
        <translation>Moins souvent avec %1 qu’avec %2, au-delà du hasard.</translation>
    </message>
    <message>
        <source>No repair of these days was signed off or returned yet.</source>
        <translation>Aucune réparation de ces jours n’a encore été visée ou renvoyée.</translation>
    </message>
    <message>
        <source>Not identified</source>
        <translation>Non identifié</translation>
    </message>
    <message>
        <source>%1 of %2 right the first time</source>
        <translation>%1 sur %2 bonnes du premier coup</translation>
    </message>
    <message>
        <source>may be %1 to %2</source>
        <extracomment>%1 and %2 are shares: the ends of an interval</extracomment>
        <translation>peut aller de %1 à %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n repair(s) right the first time: %2. The true share may lie anywhere from %3 to %4.</source>
        <extracomment>%1 is a number, %2 to %4 are shares</extracomment>
        <translation>
            <numerusform>%1 sur %n réparation bonne du premier coup&#xa0;: %2. La part réelle peut aller de %3 à %4.</numerusform>
            <numerusform>%1 sur %n réparations bonnes du premier coup&#xa0;: %2. La part réelle peut aller de %3 à %4.</numerusform>
        </translation>
    </message>
    <message>
        <source>No repair of these days was handed over with its times told.</source>
        <translation>Aucune réparation de ces jours n’a été remise avec ses temps indiqués.</translation>
    </message>
    <message>
        <source>took %1</source>
        <translation>réel %1</translation>
    </message>
    <message>
        <source>one in ten %1 or more</source>
        <translation>une sur dix %1 ou plus</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n réparation</numerusform>
            <numerusform>%n réparations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Most is lost at ‘%1’: half of %n repair(s) took %2 or more, the plan said %3.</source>
        <translation>
            <numerusform>On perd le plus à «&#xa0;%1&#xa0;»&#xa0;: la moitié de %n réparation a pris %2 ou plus, le plan disait %3.</numerusform>
            <numerusform>On perd le plus à «&#xa0;%1&#xa0;»&#xa0;: la moitié de %n réparations ont pris %2 ou plus, le plan disait %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>No part takes longer than the plan says, by the middle one of its repairs.</source>
        <translation>Aucune partie ne dure plus que ne dit le plan, d’après la réparation médiane.</translation>
    </message>
    <message>
        <source>The records of these days hold no deviation.</source>
        <translation>Le journal de ces jours ne contient aucun écart.</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s)</source>
        <translation>
            <numerusform>%n fois</numerusform>
            <numerusform>%n fois</numerusform>
        </translation>
    </message>
    <message>
        <source>up to here %1</source>
        <extracomment>%1 is a share: of this row and those above</extracomment>
        <translation>jusqu’ici %1</translation>
    </message>
    <message numerus="yes">
        <source>Most often: %1, %2 of %n deviation(s), %3.</source>
        <extracomment>%1 is a kind of deviation, %2 a number, %3 a share</extracomment>
        <translation>
            <numerusform>Le plus souvent&#xa0;: %1, %2 sur %n écart, %3.</numerusform>
            <numerusform>Le plus souvent&#xa0;: %1, %2 sur %n écarts, %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The first %n kind(s) make up %1.</source>
        <translation>
            <numerusform>La première sorte fait %1.</numerusform>
            <numerusform>Les %n premières sortes font %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Is a lot of hardener drifting?</source>
        <translation>Un lot de durcisseur dérive-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>How much is mixed beyond the plan?</source>
        <translation>Combien mélange-t-on en trop&#xa0;?</translation>
    </message>
    <message>
        <source>How often is it right the first time?</source>
        <translation>Combien de fois bon du premier coup ?</translation>
    </message>
    <message>
        <source>Where does the time go?</source>
        <translation>Où passe le temps&#xa0;?</translation>
    </message>
    <message>
        <source>What strays most often?</source>
        <translation>Qu’est-ce qui s’écarte le plus souvent&#xa0;?</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s) cannot be read and are not counted.</source>
        <translation>
            <numerusform>%n réparation est illisible et n’est pas comptée.</numerusform>
            <numerusform>%n réparations sont illisibles et ne sont pas comptées.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FigureWords</name>
    <message>
        <source>Panel near dew point</source>
        <translation>Panneau près du point de rosée</translation>
    </message>
    <message>
        <source>Panel too cold</source>
        <translation>Panneau trop froid</translation>
    </message>
    <message>
        <source>Panel too hot</source>
        <translation>Panneau trop chaud</translation>
    </message>
    <message>
        <source>Air too cold</source>
        <translation>Air trop froid</translation>
    </message>
    <message>
        <source>Air too hot</source>
        <translation>Air trop chaud</translation>
    </message>
    <message>
        <source>No reading</source>
        <translation>Pas de mesure</translation>
    </message>
    <message>
        <source>Old reading</source>
        <translation>Mesure ancienne</translation>
    </message>
    <message>
        <source>Bare metal too long</source>
        <translation>Métal à nu trop longtemps</translation>
    </message>
    <message>
        <source>Sanded early</source>
        <translation>Poncé trop tôt</translation>
    </message>
    <message>
        <source>Edges after due gel</source>
        <translation>Bords après prise prévue</translation>
    </message>
    <message>
        <source>Edges after gel</source>
        <translation>Bords après la prise</translation>
    </message>
    <message>
        <source>Hardener low</source>
        <translation>Trop peu de durcisseur</translation>
    </message>
    <message>
        <source>Hardener high</source>
        <translation>Trop de durcisseur</translation>
    </message>
    <message>
        <source>Lift too thick</source>
        <translation>Passe trop épaisse</translation>
    </message>
    <message>
        <source>Steps skimmed</source>
        <translation>Étapes survolées</translation>
    </message>
    <message>
        <source>Wait cut short</source>
        <translation>Attente écourtée</translation>
    </message>
    <message>
        <source>No filler lot</source>
        <translation>Pas de lot de mastic</translation>
    </message>
    <message>
        <source>No hardener lot</source>
        <translation>Pas de lot de durcisseur</translation>
    </message>
    <message>
        <source>Demo sheet</source>
        <translation>Fiche de démo</translation>
    </message>
    <message>
        <source>Answer changed</source>
        <translation>Réponse changée</translation>
    </message>
    <message>
        <source>Planned again</source>
        <translation>Replanifié</translation>
    </message>
    <message>
        <source>Stop overridden</source>
        <translation>Dérogation</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>En attente</translation>
    </message>
    <message>
        <source>No photo</source>
        <translation>Pas de photo</translation>
    </message>
    <message>
        <source>No name</source>
        <translation>Sans nom</translation>
    </message>
    <message>
        <source>Bench restarted</source>
        <translation>Poste redémarré</translation>
    </message>
    <message>
        <source>Clock set on</source>
        <translation>Horloge avancée</translation>
    </message>
    <message>
        <source>Clock set back</source>
        <translation>Horloge reculée</translation>
    </message>
    <message>
        <source>Preparing</source>
        <translation>Préparer</translation>
    </message>
    <message>
        <source>Laying</source>
        <translation>Appliquer</translation>
    </message>
    <message>
        <source>Curing</source>
        <translation>Durcir</translation>
    </message>
    <message>
        <source>Sanding</source>
        <translation>Poncer</translation>
    </message>
    <message>
        <source>Finishing</source>
        <translation>Finir</translation>
    </message>
    <message>
        <source>gel %1 lies outside the limits</source>
        <extracomment>%1 is the number of a gel, so in all of these</extracomment>
        <translation>la prise %1 est hors des limites</translation>
    </message>
    <message>
        <source>gel %1: two of three lie far off to one side</source>
        <translation>prise %1 : deux sur trois loin d’un côté</translation>
    </message>
    <message>
        <source>gel %1: four of five lie off to one side</source>
        <translation>prise %1 : quatre sur cinq d’un côté</translation>
    </message>
    <message>
        <source>gel %1: eight in a row lie on one side of the mean</source>
        <translation>prise %1 : huit de suite d’un côté de la moyenne</translation>
    </message>
    <message>
        <source>gel %1: six in a row go the same way</source>
        <translation>prise %1 : six de suite dans le même sens</translation>
    </message>
    <message>
        <source>gel %1: fourteen go up and down by turns</source>
        <translation>prise %1 : quatorze montent et descendent tour à tour</translation>
    </message>
    <message>
        <source>as fast as the sheet</source>
        <translation>aussi vite que la fiche</translation>
    </message>
    <message>
        <source>%1 slower than the sheet</source>
        <translation>%1 plus lent que la fiche</translation>
    </message>
    <message>
        <source>%1 faster than the sheet</source>
        <translation>%1 plus rapide que la fiche</translation>
    </message>
</context>
<context>
    <name>FoundBy</name>
    <message>
        <source>magnet</source>
        <extracomment>what told one substrate from another, in a list: &quot;magnet, tap sound&quot;</extracomment>
        <translation>aimant</translation>
    </message>
    <message>
        <source>zinc gauge</source>
        <translation>jauge de zinc</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>ohmmètre</translation>
    </message>
    <message>
        <source>broken edge</source>
        <translation>bord cassé</translation>
    </message>
    <message>
        <source>marking on the back</source>
        <translation>marquage au dos</translation>
    </message>
    <message>
        <source>tap sound</source>
        <translation>son au tapotement</translation>
    </message>
    <message>
        <source>%1 (told by %2)</source>
        <extracomment>%1 is what a panel is made of, %2 a list: &quot;SMC (told by broken edge, tap sound)&quot;</extracomment>
        <translation>%1 (d’après&#xa0;: %2)</translation>
    </message>
</context>
<context>
    <name>GelTold</name>
    <message numerus="yes">
        <source>%n gel(s) marked, the newest: %1.</source>
        <extracomment>%1 is what is unusual with the newest of them: &quot;gel 31 lies outside the limits&quot;</extracomment>
        <translation>
            <numerusform>%n prise marquée, la dernière : %1.</numerusform>
            <numerusform>%n prises marquées, la dernière : %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The moving mean was outside its limits until gel %1 and has come back.</source>
        <extracomment>%1 is the number of a gel</extracomment>
        <translation>La moyenne mobile était hors de ses limites jusqu’à la prise %1 et y est revenue.</translation>
    </message>
    <message>
        <source>The moving mean is above its limits since gel %1: slower than the sheet.</source>
        <translation>La moyenne mobile est au-dessus de ses limites depuis la prise %1 : plus lent que la fiche.</translation>
    </message>
    <message>
        <source>The moving mean is below its limits since gel %1: faster than the sheet.</source>
        <translation>La moyenne mobile est au-dessous de ses limites depuis la prise %1 : plus rapide que la fiche.</translation>
    </message>
    <message numerus="yes">
        <source>%n gel(s), on average %1.</source>
        <extracomment>%1: &quot;12 % slower than the sheet&quot;</extracomment>
        <translation>
            <numerusform>%n prise, en moyenne %1.</numerusform>
            <numerusform>%n prises, en moyenne %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing says that it drifts.</source>
        <translation>Rien n’indique qu’il dérive.</translation>
    </message>
    <message>
        <source>With so few the limits are rough.</source>
        <translation>Avec si peu, les limites sont approximatives.</translation>
    </message>
    <message>
        <source>Gel %1</source>
        <translation>Prise %1</translation>
    </message>
    <message>
        <source>%1 of the sheet’s time</source>
        <translation>%1 du temps de la fiche</translation>
    </message>
    <message>
        <source>moving mean %1</source>
        <translation>moyenne mobile %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>saut %1</translation>
    </message>
    <message numerus="yes">
        <source>A control chart needs two gels of a lot; in these days %n was seen.</source>
        <translation>
            <numerusform>Une carte de contrôle demande deux prises d’un lot ; pendant ces jours, %n a été vue.</numerusform>
            <numerusform>Une carte de contrôle demande deux prises d’un lot ; pendant ces jours, %n ont été vues.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Tough yellow fibre that fuzzes instead of breaking; it cannot be sanded clean.</source>
        <translation>Fibre jaune et tenace qui s’effiloche au lieu de casser&#xa0;; elle ne se ponce pas net.</translation>
    </message>
    <message>
        <source>Cloth and resin bonded behind a hole, so that the filler has something to lie on.</source>
        <translation>Tissu et résine collés derrière un trou, pour que le mastic repose dessus.</translation>
    </message>
    <message>
        <source>What is mixed at one time, with one bead of hardener.</source>
        <translation>Ce qui est mélangé en une fois, avec un cordon de durcisseur.</translation>
    </message>
    <message>
        <source>The line of hardener paste pressed from its tube; its length is the measure.</source>
        <translation>Le trait de durcisseur en pâte sorti du tube ; sa longueur est la mesure.</translation>
    </message>
    <message>
        <source>The slope ground round a hole or crack, which gives the filler area to hold on.</source>
        <translation>La pente meulée autour d’un trou ou d’une fissure, où le mastic tient.</translation>
    </message>
    <message>
        <source>Two panels joined by adhesive; it moves a little with heat and load.</source>
        <translation>Deux panneaux joints par collage&#xa0;; il bouge un peu à la chaleur et à la charge.</translation>
    </message>
    <message>
        <source>Fine cracks like a net in paint, gel coat or a filler that got too hot.</source>
        <translation>Fines fissures en réseau dans la peinture, le gel coat ou un mastic trop chaud.</translation>
    </message>
    <message>
        <source>The reaction that makes the paste hard; it gives off heat.</source>
        <translation>La réaction qui durcit la pâte&#xa0;; elle dégage de la chaleur.</translation>
    </message>
    <message>
        <source>Tape or card behind a hole that keeps the filler in; it carries nothing.</source>
        <translation>Adhésif ou carton derrière un trou qui retient le mastic&#xa0;; il ne porte rien.</translation>
    </message>
    <message>
        <source>Plies of a laminate that have come apart; they sound dull when tapped.</source>
        <translation>Plis d’un stratifié qui se sont séparés&#xa0;; ils sonnent sourd.</translation>
    </message>
    <message>
        <source>Where the work left a limit; it stands in the record and is looked at.</source>
        <translation>Là où le travail est sorti d’une limite ; noté et revu.</translation>
    </message>
    <message>
        <source>How much warmer the panel is than the dew point of the air round it.</source>
        <translation>De combien le panneau est plus chaud que le point de rosée de l’air.</translation>
    </message>
    <message>
        <source>The temperature at which water comes out of the air onto a surface.</source>
        <translation>La température où l’eau de l’air se dépose sur une surface.</translation>
    </message>
    <message>
        <source>How sharply a painted surface mirrors; low spots and sand marks blur it.</source>
        <translation>La netteté du reflet d’une peinture&#xa0;; creux et rayures la troublent.</translation>
    </message>
    <message>
        <source>The primer that a new metal part was dipped in; thin, hard, often grey or black.</source>
        <translation>L’apprêt de bain d’une pièce neuve&#xa0;; mince, dur, gris ou noir.</translation>
    </message>
    <message>
        <source>Two-part primer that keeps water off metal; cured and abraded it carries filler.</source>
        <translation>Primaire à deux composants qui protège le métal&#xa0;; durci et poncé, il porte le mastic.</translation>
    </message>
    <message>
        <source>Primer with acid that bites metal; polyester does not hold on it.</source>
        <translation>Primaire à l’acide qui mord le métal&#xa0;; le polyester n’y tient pas.</translation>
    </message>
    <message>
        <source>The heat of the cure; a thick lump gets hotter than a thin layer.</source>
        <translation>La chaleur de la prise&#xa0;; un bloc épais chauffe plus qu’une couche mince.</translation>
    </message>
    <message>
        <source>One side of the panel: front is what the customer sees.</source>
        <translation>Un côté du panneau&#xa0;: l’avant est ce que voit le client.</translation>
    </message>
    <message>
        <source>An edge sanded out until a hand cannot feel where it ends.</source>
        <translation>Un bord poncé jusqu’à ce que la main n’en sente plus la fin.</translation>
    </message>
    <message>
        <source>Paste of polyester with powder or fibre that fills and is sanded.</source>
        <translation>Pâte polyester avec poudre ou fibre, qui comble et se ponce.</translation>
    </message>
    <message>
        <source>The wait in which a solvent leaves a surface, until nothing smells or feels cold.</source>
        <translation>L’attente où le solvant s’en va, jusqu’à ne plus sentir ni froid ni odeur.</translation>
    </message>
    <message>
        <source>Steel with a skin of zinc; sanded through, it rusts there.</source>
        <translation>Acier à peau de zinc&#xa0;; percée au ponçage, il y rouille.</translation>
    </message>
    <message>
        <source>When the paste stops flowing and turns to rubber: no spreading from then on.</source>
        <translation>Quand la pâte cesse de couler et devient caoutchouc : ne plus étaler.</translation>
    </message>
    <message>
        <source>The unreinforced outer skin of a moulded laminate.</source>
        <translation>La peau extérieure sans fibre d’un stratifié moulé.</translation>
    </message>
    <message>
        <source>From hardener in to the gel; it follows from lot, warmth and share of hardener.</source>
        <translation>Du durcisseur à la prise&#xa0;; selon lot, chaleur et part de durcisseur.</translation>
    </message>
    <message>
        <source>The number of an abrasive paper: the higher, the finer.</source>
        <translation>Le numéro d’un papier abrasif&#xa0;: plus haut, plus fin.</translation>
    </message>
    <message>
        <source>A thin veil over the repair that stays in low spots while sanding.</source>
        <translation>Un voile mince qui reste dans les creux pendant le ponçage.</translation>
    </message>
    <message>
        <source>Glass cloth or mat laid by hand in resin; the cloth shows at a broken edge.</source>
        <translation>Tissu ou mat de verre posé à la main en résine&#xa0;; visible au bord cassé.</translation>
    </message>
    <message>
        <source>The paste with peroxide that starts the cure; more of it is not harder.</source>
        <translation>La pâte au peroxyde qui lance la prise&#xa0;; plus n’est pas plus dur.</translation>
    </message>
    <message>
        <source>One layer of filler that is laid, cures and is sanded before the next.</source>
        <translation>Une épaisseur de mastic posée, durcie et poncée avant la suivante.</translation>
    </message>
    <message>
        <source>What was made at one time; its number stands on the package.</source>
        <translation>Ce qui fut fabriqué en une fois&#xa0;; son numéro est sur l’emballage.</translation>
    </message>
    <message>
        <source>When edge or sand marks of the repair show through the paint later.</source>
        <translation>Quand bord ou rayures de la réparation ressortent plus tard dans la peinture.</translation>
    </message>
    <message>
        <source>What works in the hardener; it burns eyes and feeds fire.</source>
        <translation>Ce qui agit dans le durcisseur&#xa0;; il brûle les yeux et nourrit le feu.</translation>
    </message>
    <message>
        <source>A small open bubble in the sanded surface.</source>
        <translation>Une petite bulle ouverte dans la surface poncée.</translation>
    </message>
    <message>
        <source>How long a batch can be worked on the board.</source>
        <translation>Le temps où un mélange se travaille sur la palette.</translation>
    </message>
    <message>
        <source>The roughness that abrading leaves, for the filler to bite.</source>
        <translation>La rugosité que laisse le ponçage, où le mastic mord.</translation>
    </message>
    <message>
        <source>The round of filler laid on the board; its width is the measure.</source>
        <translation>Le rond de mastic posé sur la palette&#xa0;; sa largeur est la mesure.</translation>
    </message>
    <message>
        <source>The firm support of the paper that keeps a surface flat.</source>
        <translation>L’appui ferme du papier qui garde la surface plane.</translation>
    </message>
    <message>
        <source>To dull a surface lightly, so that the next coat holds.</source>
        <translation>Ternir légèrement une surface pour que la couche suivante tienne.</translation>
    </message>
    <message>
        <source>What the maker says of a product, as the program reads it.</source>
        <translation>Ce que le fabricant dit d’un produit, tel que lu par le programme.</translation>
    </message>
    <message>
        <source>The thin last coat of finishing filler over lift and edge.</source>
        <translation>La dernière couche mince de mastic de finition sur passe et bord.</translation>
    </message>
    <message>
        <source>Sheet moulding compound: short glass fibre pressed hot in a mould, flecks at the broken edge.</source>
        <translation>Composé moulé à chaud à fibre de verre courte ; mouchetures au bord cassé.</translation>
    </message>
    <message>
        <source>A hole at the tip of a crack, so that it runs no further.</source>
        <translation>Un trou à la pointe d’une fissure, pour qu’elle n’aille pas plus loin.</translation>
    </message>
    <message>
        <source>The sticky film that air leaves on a cured face; it clogs paper.</source>
        <translation>Le film collant que l’air laisse à la surface&#xa0;; il encrasse le papier.</translation>
    </message>
    <message>
        <source>One cloth wipes the solvent on, a clean dry one takes it off before it dries.</source>
        <translation>Un chiffon pose le solvant, un autre propre et sec l’enlève avant séchage.</translation>
    </message>
    <message>
        <source>Two panels joined by welding; only a solid, dressed one is ever filled over.</source>
        <translation>Deux panneaux soudés ; seul un cordon continu, meulé, se mastique.</translation>
    </message>
    <message>
        <source>Working resin in until every fibre is wet and no white is left.</source>
        <translation>Faire entrer la résine : chaque fibre mouillée, plus aucun blanc.</translation>
    </message>
</context>
<context>
    <name>Hands</name>
    <message>
        <source>Hands: job %1 is still being spread.</source>
        <translation>Mains&#xa0;: dossier %1 encore en étalement.</translation>
    </message>
    <message>
        <source>Hands: job %1 needs its edges cleared now.</source>
        <translation>Mains&#xa0;: dossier %1, bords à dégager maintenant.</translation>
    </message>
    <message>
        <source>Hands: job %1 needs its edges cleared in %2.</source>
        <translation>Mains&#xa0;: dossier %1, bords à dégager dans %2.</translation>
    </message>
    <message>
        <source>Hands: job %1 sands easily only until %2.</source>
        <translation>Mains&#xa0;: dossier %1, ponçage facile jusqu’à %2 seulement.</translation>
    </message>
    <message>
        <source>spread it</source>
        <translation>étaler</translation>
    </message>
    <message>
        <source>clear the edges</source>
        <translation>dégager les bords</translation>
    </message>
    <message>
        <source>sand it</source>
        <translation>poncer</translation>
    </message>
    <message>
        <source>Hold this batch back until %1: %2 to go.</source>
        <translation>Différer ce mélange jusqu’à %1 : encore %2.</translation>
    </message>
    <message>
        <source>Two jobs need hands now: first job %1, %2, then job %3.</source>
        <translation>Deux dossiers demandent des mains&#xa0;: d’abord %1, %2, puis %3.</translation>
    </message>
    <message>
        <source>In %1 two jobs need hands: first job %2, %3, then job %4.</source>
        <extracomment>%1 is a time, mm:ss; %2 and %4 job numbers; %3 what to do with the first</extracomment>
        <translation>Dans %1, deux dossiers demandent des mains&#xa0;: d’abord %2, %3, puis %4.</translation>
    </message>
    <message>
        <source>two jobs need hands, turn %1</source>
        <translation>deux dossiers à la fois, tour %1</translation>
    </message>
    <message>
        <source>Too hot for this lift: %1 of %2. Let the panel cool and read again.</source>
        <translation>Trop chaud pour cette passe&#xa0;: %1, admis %2. Laisser refroidir le panneau et remesurer.</translation>
    </message>
    <message>
        <source>Too thick for this product: %1 of %2. Choose the product planned with.</source>
        <translation>Trop épais pour ce produit&#xa0;: %1, admis %2. Prendre le produit du plan.</translation>
    </message>
    <message>
        <source>The cure of this product cannot be worked out. Choose the product planned with.</source>
        <translation>Le durcissement de ce produit ne se calcule pas. Prendre le produit du plan.</translation>
    </message>
    <message>
        <source>Not this product here: %1 Choose the product planned with.</source>
        <translation>Pas ce produit ici&#xa0;: %1 Prendre le produit du plan.</translation>
    </message>
</context>
<context>
    <name>Harm</name>
    <message>
        <source>Polyester filler (styrene)</source>
        <translation>Mastic polyester (styrène)</translation>
    </message>
    <message>
        <source>Hardener paste (peroxide)</source>
        <translation>Durcisseur en pâte (peroxyde)</translation>
    </message>
    <message>
        <source>Mixed filler left over</source>
        <translation>Reste de mastic mélangé</translation>
    </message>
    <message>
        <source>Acetone</source>
        <translation>Acétone</translation>
    </message>
    <message>
        <source>Wax and grease remover</source>
        <translation>Dégraissant (cires et graisses)</translation>
    </message>
    <message>
        <source>Glass and laminate dust</source>
        <translation>Poussière de verre et de stratifié</translation>
    </message>
    <message>
        <source>Filler dust</source>
        <translation>Poussière de mastic</translation>
    </message>
    <message>
        <source>Old paint dust (lead, chromate)</source>
        <translation>Poussière de vieille peinture (plomb, chromate)</translation>
    </message>
    <message>
        <source>Steel dust</source>
        <translation>Poussière d’acier</translation>
    </message>
    <message>
        <source>Aluminium dust</source>
        <translation>Poussière d’aluminium</translation>
    </message>
    <message>
        <source>Compressed air</source>
        <translation>Air comprimé</translation>
    </message>
    <message>
        <source>Lay-up resin (styrene)</source>
        <translation>Résine de stratification (styrène)</translation>
    </message>
    <message>
        <source>Lay-up catalyst (peroxide)</source>
        <translation>Catalyseur de stratification (peroxyde)</translation>
    </message>
    <message>
        <source>Accelerator</source>
        <translation>Accélérateur</translation>
    </message>
    <message>
        <source>Guide coat (spray can)</source>
        <translation>Témoin (aérosol)</translation>
    </message>
    <message>
        <source>Nitrile against splashes; styrene comes through: change when wet.</source>
        <translation>Nitrile contre les éclaboussures&#xa0;; le styrène le traverse&#xa0;: changer si mouillé.</translation>
    </message>
    <message>
        <source>Nitrile; change at once when wet.</source>
        <translation>Nitrile&#xa0;; changer aussitôt si mouillé.</translation>
    </message>
    <message>
        <source>Butyl rubber, or what its sheet names; thin nitrile lasts minutes.</source>
        <translation>Butyle, ou ce que dit sa fiche&#xa0;; le nitrile fin tient quelques minutes.</translation>
    </message>
    <message>
        <source>Heat-resistant gloves for a hot lump.</source>
        <translation>Gants résistant à la chaleur pour un reste chaud.</translation>
    </message>
    <message>
        <source>Against edges and fibres; nothing loose near a rotating tool.</source>
        <translation>Contre arêtes et fibres ; rien de flottant près d’un outil rotatif.</translation>
    </message>
    <message>
        <source>Thin gloves keep the dust off the skin.</source>
        <translation>Gants fins, contre la poussière sur la peau.</translation>
    </message>
    <message>
        <source>None for the air itself; goggles and ear protection.</source>
        <translation>Aucun pour l’air même&#xa0;; lunettes et protection auditive.</translation>
    </message>
    <message>
        <source>Extraction first; else a mask with organic vapour filters.</source>
        <translation>D’abord l’aspiration&#xa0;; sinon un masque à filtres pour vapeurs organiques.</translation>
    </message>
    <message>
        <source>None for the paste alone; the filler beside it has its own.</source>
        <translation>Aucun pour la pâte seule&#xa0;; le mastic a le sien.</translation>
    </message>
    <message>
        <source>Extraction first, and a particle mask (P2, N95 or better).</source>
        <translation>D’abord l’aspiration, et un masque à particules (P2, N95 ou mieux).</translation>
    </message>
    <message>
        <source>Extraction first, and a P3 or P100 particle filter.</source>
        <translation>D’abord l’aspiration, et un filtre à particules P3 ou P100.</translation>
    </message>
    <message>
        <source>Skin: soap and water. Eyes: rinse long. Dizzy: fresh air, doctor.</source>
        <translation>Peau&#xa0;: eau et savon. Yeux&#xa0;: rincer longtemps. Vertige&#xa0;: air frais, médecin.</translation>
    </message>
    <message>
        <source>Eyes: rinse at once, 15 minutes, lids open; doctor. Skin: wash off.</source>
        <translation>Yeux&#xa0;: rincer aussitôt, 15 minutes, paupières ouvertes&#xa0;; médecin. Peau&#xa0;: laver.</translation>
    </message>
    <message>
        <source>Burn: cool under running water, 20 minutes; doctor.</source>
        <translation>Brûlure&#xa0;: refroidir à l’eau courante, 20 minutes&#xa0;; médecin.</translation>
    </message>
    <message>
        <source>Swallowed: no vomiting, doctor at once. Skin: soap and water.</source>
        <translation>Avalé&#xa0;: ne pas faire vomir, médecin aussitôt. Peau&#xa0;: eau et savon.</translation>
    </message>
    <message>
        <source>Eyes: rinse, do not rub. Skin: cool water, then wash.</source>
        <translation>Yeux&#xa0;: rincer, ne pas frotter. Peau&#xa0;: eau fraîche, puis laver.</translation>
    </message>
    <message>
        <source>Eyes: do not rub; a splinter that stays is the doctor’s.</source>
        <translation>Yeux&#xa0;: ne pas frotter&#xa0;; un éclat qui reste est pour le médecin.</translation>
    </message>
    <message>
        <source>Wash hands and face before you eat, drink or smoke. Unwell: doctor.</source>
        <translation>Laver mains et visage avant de manger, boire ou fumer. Malaise&#xa0;: médecin.</translation>
    </message>
    <message>
        <source>Air under the skin: hospital at once, however small it looks.</source>
        <translation>Air sous la peau&#xa0;: hôpital aussitôt, même si cela semble petit.</translation>
    </message>
    <message>
        <source>Let it cure, spread thin on metal. Uncured it is hazardous waste.</source>
        <translation>Laisser durcir, étalé mince sur du métal. Non durci, c’est un déchet dangereux.</translation>
    </message>
    <message>
        <source>Never into the bin, never onto sawdust: apart, as its sheet says.</source>
        <translation>Jamais à la poubelle ni sur de la sciure&#xa0;: à part, comme le dit sa fiche.</translation>
    </message>
    <message>
        <source>Thin on metal or under water, watched till cold; never the bin.</source>
        <translation>Mince sur métal ou sous l’eau, surveillé jusqu’à froid&#xa0;; jamais à la poubelle.</translation>
    </message>
    <message>
        <source>Rags into the lidded metal can; nothing down the drain.</source>
        <translation>Chiffons dans le bidon métallique à couvercle&#xa0;; rien à l’égout.</translation>
    </message>
    <message>
        <source>A bag of its own, as hazardous waste.</source>
        <translation>Un sac à part, comme déchet dangereux.</translation>
    </message>
    <message>
        <source>Aluminium and steel dust apart and dry: own extractors, own cans.</source>
        <translation>Poussières d’aluminium et d’acier à part et au sec : aspirateurs et bidons distincts.</translation>
    </message>
    <message>
        <source>Nothing is left over.</source>
        <translation>Il ne reste rien.</translation>
    </message>
    <message>
        <source>A container of its own, far from every peroxide.</source>
        <translation>Un récipient à part, loin de tout peroxyde.</translation>
    </message>
    <message>
        <source>Empty cans: never pierced, never into a fire.</source>
        <translation>Bombes vides&#xa0;: ne jamais percer, jamais au feu.</translation>
    </message>
    <message>
        <source>Extraction on first.</source>
        <translation>D’abord l’aspiration.</translation>
    </message>
    <message>
        <source>No lamp, no grinder, no spark.</source>
        <translation>Ni lampe, ni meuleuse, ni étincelle.</translation>
    </message>
    <message>
        <source>Fresh air.</source>
        <translation>Air frais.</translation>
    </message>
    <message>
        <source>Peroxide and accelerator: never together.</source>
        <translation>Peroxyde et accélérateur&#xa0;: jamais ensemble.</translation>
    </message>
    <message>
        <source>Never at skin.</source>
        <translation>Jamais vers la peau.</translation>
    </message>
    <message>
        <source>What is left over gets hot.</source>
        <translation>Le reste de mélange chauffe.</translation>
    </message>
    <message>
        <source>Before the first stroke, not after.</source>
        <translation>Avant le premier passage, pas après.</translation>
    </message>
    <message>
        <source>Until all of it has flashed off, in the hollows too.</source>
        <translation>Jusqu’à ce que tout soit évaporé, dans les creux aussi.</translation>
    </message>
    <message>
        <source>Extraction where there is vapour.</source>
        <translation>Aspiration là où il y a de la vapeur.</translation>
    </message>
    <message>
        <source>Not in one cup, not on one shelf: it can go off.</source>
        <translation>Ni même pot ni même étagère : cela peut exploser.</translation>
    </message>
    <message>
        <source>Below 30 psi (2 bar), chips guarded: 29 CFR 1910.242(b).</source>
        <translation>Moins de 30 psi (2 bar), éclats arrêtés : 29 CFR 1910.242(b).</translation>
    </message>
    <message>
        <source>Thin on metal, or under water; never into the bin.</source>
        <translation>Mince sur métal, ou sous l’eau&#xa0;; jamais à la poubelle.</translation>
    </message>
    <message>
        <source>Danger</source>
        <translation>Danger</translation>
    </message>
    <message>
        <source>Warning</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>exploding bomb</source>
        <translation>bombe explosant</translation>
    </message>
    <message>
        <source>flame</source>
        <translation>flamme</translation>
    </message>
    <message>
        <source>flame over circle</source>
        <translation>flamme au-dessus d’un cercle</translation>
    </message>
    <message>
        <source>gas cylinder</source>
        <translation>bouteille à gaz</translation>
    </message>
    <message>
        <source>corrosion</source>
        <translation>corrosion</translation>
    </message>
    <message>
        <source>skull and crossbones</source>
        <translation>tête de mort sur deux tibias</translation>
    </message>
    <message>
        <source>exclamation mark</source>
        <translation>point d’exclamation</translation>
    </message>
    <message>
        <source>health hazard</source>
        <translation>danger pour la santé</translation>
    </message>
    <message>
        <source>environment</source>
        <translation>environnement</translation>
    </message>
    <message>
        <source>In the extractor’s bag, closed; extract first, never sweep.</source>
        <translation>Dans le sac de l’aspirateur, fermé&#xa0;; d’abord aspirer, ne jamais balayer.</translation>
    </message>
</context>
<context>
    <name>HarmScreen</name>
    <message>
        <source>Hazards</source>
        <translation>Dangers</translation>
    </message>
</context>
<context>
    <name>Headless</name>
    <message>
        <source>Dew point, margin, and whether filling may start.</source>
        <translation>Point de rosée, écart, et si l’on peut mastiquer.</translation>
    </message>
    <message>
        <source>Air temperature, −30 to 60 °C.</source>
        <translation>Température de l’air, −30 à 60&#xa0;°C.</translation>
    </message>
    <message>
        <source>Relative humidity, above 0 to 100 %.</source>
        <translation>Humidité relative, au-dessus de 0 à 100&#xa0;%.</translation>
    </message>
    <message>
        <source>Panel temperature, −30 to 100 °C.</source>
        <translation>Température du panneau, −30 à 100&#xa0;°C.</translation>
    </message>
    <message>
        <source>--%1: given %2 times; allowed is once</source>
        <translation>--%1&#xa0;: donné %2 fois&#xa0;; admis une fois</translation>
    </message>
    <message>
        <source>--%1: must not be empty; it needs %2</source>
        <translation>--%1&#xa0;: ne doit pas être vide&#xa0;; il faut %2</translation>
    </message>
    <message>
        <source>--%1: missing; it needs %2</source>
        <translation>--%1&#xa0;: manque&#xa0;; il faut %2</translation>
    </message>
    <message>
        <source>FILE: missing; it is a file, or - for standard input</source>
        <translation>FILE&#xa0;: manque&#xa0;; un fichier, ou - pour l’entrée standard</translation>
    </message>
    <message>
        <source>FILE: must not be empty; it is a file, or - for standard input</source>
        <translation>FILE&#xa0;: ne doit pas être vide&#xa0;; un fichier, ou - pour l’entrée standard</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: one word too many</source>
        <translation>&apos;%1&apos;&#xa0;: un mot de trop</translation>
    </message>
    <message>
        <source>Language of the texts: %1; otherwise en.</source>
        <translation>Langue des textes&#xa0;: %1&#xa0;; sinon en.</translation>
    </message>
    <message>
        <source>This help.</source>
        <translation>Cette aide.</translation>
    </message>
    <message>
        <source>The version.</source>
        <translation>La version.</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: no such option; --help lists them</source>
        <translation>&apos;%1&apos;&#xa0;: option inconnue&#xa0;; --help les liste</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: its value is missing</source>
        <translation>&apos;%1&apos;&#xa0;: sa valeur manque</translation>
    </message>
    <message>
        <source>Usage: %1</source>
        <translation>Usage&#xa0;: %1</translation>
    </message>
    <message>
        <source>Without a command the bench opens.</source>
        <translation>Sans commande, le poste s’ouvre.</translation>
    </message>
    <message>
        <source>The log that the bench opens.</source>
        <translation>Le journal qu’ouvre le poste.</translation>
    </message>
    <message>
        <source>A window of this size instead of the full screen.</source>
        <translation>Une fenêtre de cette taille au lieu du plein écran.</translation>
    </message>
    <message>
        <source>standard output cannot be written</source>
        <translation>impossible d’écrire sur la sortie standard</translation>
    </message>
    <message>
        <source>&apos;%1&apos;: no such command; there is: %2</source>
        <translation>&apos;%1&apos;&#xa0;: commande inconnue&#xa0;; il y a&#xa0;: %2</translation>
    </message>
    <message>
        <source>A defect of the program: %1</source>
        <translation>Un défaut du programme&#xa0;: %1</translation>
    </message>
    <message>
        <source>FILE: &apos;%1&apos; cannot be read: %2</source>
        <translation>FILE&#xa0;: &apos;%1&apos; illisible&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: it breaks here: %2: %3</source>
        <translation>%1&#xa0;: rupture ici&#xa0;: %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>a name that no file has yet</source>
        <translation>un nom de fichier encore libre</translation>
    </message>
    <message>
        <source>--to: &apos;%1&apos; cannot be written: %2</source>
        <translation>--to&#xa0;: écriture de &apos;%1&apos; impossible&#xa0;: %2</translation>
    </message>
    <message>
        <source>Whether a log holds, and the first place where it breaks.</source>
        <translation>Si un journal tient, sinon sa première rupture.</translation>
    </message>
    <message>
        <source>The log.</source>
        <translation>Le journal.</translation>
    </message>
    <message>
        <source>A head that the chain must hold: 64 hexadecimal digits.</source>
        <translation>Une tête que la chaîne doit contenir&#xa0;: 64 chiffres hexadécimaux.</translation>
    </message>
    <message>
        <source>A consistent copy of a log, verified after writing.</source>
        <translation>Une copie cohérente d’un journal, vérifiée après écriture.</translation>
    </message>
    <message>
        <source>The log; the program may be running on it.</source>
        <translation>Le journal&#xa0;; le programme peut l’utiliser.</translation>
    </message>
    <message>
        <source>The copy; a file that is there is never overwritten.</source>
        <translation>La copie&#xa0;; un fichier existant n’est jamais écrasé.</translation>
    </message>
    <message>
        <source>Bead and both masses for a puddle, or puddle and bead for a mass.</source>
        <translation>Cordon et masses pour une galette, ou galette et cordon pour une masse.</translation>
    </message>
    <message>
        <source>The puddle across, 5 to 500 mm.</source>
        <translation>La largeur de la galette, 5 à 500&#xa0;mm.</translation>
    </message>
    <message>
        <source>The mass of filler instead, 0.1 to 20000 g.</source>
        <translation>La masse de mastic à la place, 0.1 à 20000&#xa0;g.</translation>
    </message>
    <message>
        <source>The product sheet, by id or class; otherwise mixed strand.</source>
        <translation>La fiche produit, par id ou classe&#xa0;; sinon fibre mixte.</translation>
    </message>
    <message>
        <source>Plans the repair that FILE describes.</source>
        <translation>Planifie la réparation décrite par FILE.</translation>
    </message>
    <message>
        <source>At %1 s the reaction runs away faster than time can be told apart.</source>
        <translation>À %1 s la réaction s’emballe plus vite que le temps ne se distingue.</translation>
    </message>
    <message>
        <source>At %1 s the steps allowed were used up.</source>
        <translation>À %1 s les pas permis étaient épuisés.</translation>
    </message>
    <message>
        <source>Solves the cure case in FILE.</source>
        <translation>Résout le cas de durcissement de FILE.</translation>
    </message>
    <message>
        <source>--pdf: &apos;%1&apos; cannot be written: %2</source>
        <translation>--pdf&#xa0;: écriture de &apos;%1&apos; impossible&#xa0;: %2</translation>
    </message>
    <message>
        <source>One day&apos;s repairs with their records, as JSON, CSV or on paper.</source>
        <translation>Les réparations d’un jour et leurs historiques, en JSON, CSV ou sur papier.</translation>
    </message>
    <message>
        <source>JSON on standard output: the whole records.</source>
        <translation>JSON sur la sortie standard&#xa0;: les historiques complets.</translation>
    </message>
    <message>
        <source>CSV on standard output: one row a repair.</source>
        <translation>CSV sur la sortie standard&#xa0;: une ligne par réparation.</translation>
    </message>
    <message>
        <source>A PDF; a file that is there is never overwritten.</source>
        <translation>Un PDF&#xa0;; un fichier existant n’est jamais écrasé.</translation>
    </message>
    <message>
        <source>Of the PDF: a4 or letter; otherwise a4.</source>
        <translation>Pour le PDF&#xa0;: a4 ou letter&#xa0;; sinon a4.</translation>
    </message>
    <message>
        <source>Of the PDF: metric or us; otherwise metric.</source>
        <translation>Pour le PDF&#xa0;: metric ou us&#xa0;; sinon metric.</translation>
    </message>
    <message>
        <source>%1: refused, %2</source>
        <translation>%1 : refusé, %2</translation>
    </message>
    <message>
        <source>; the next PIN is looked at in %1 s</source>
        <translation>; le prochain code sera vérifié dans %1 s</translation>
    </message>
    <message>
        <source>the refusal could not be written into the log</source>
        <translation>le refus n’a pas pu être écrit dans le journal</translation>
    </message>
    <message>
        <source>A supervisor&apos;s act on a log that no bench has open; the PIN on standard input.</source>
        <translation>Un acte du chef d’atelier sur un journal qu’aucun poste n’a ouvert ; le code sur l’entrée standard.</translation>
    </message>
    <message>
        <source>Who does it.</source>
        <translation>Qui le fait.</translation>
    </message>
    <message>
        <source>Of override: the stop.</source>
        <translation>De override : l’arrêt.</translation>
    </message>
    <message>
        <source>Of correct: the entry that is put right.</source>
        <translation>De correct : l’entrée qui est corrigée.</translation>
    </message>
    <message>
        <source>Of forget: the product&apos;s sheet.</source>
        <translation>De forget : la fiche du produit.</translation>
    </message>
    <message>
        <source>Of forget: the hardener&apos;s lot.</source>
        <translation>De forget : le lot du durcisseur.</translation>
    </message>
    <message>
        <source>%1: cannot be written</source>
        <translation>%1 : ne peut être écrit</translation>
    </message>
    <message>
        <source>pin: allowed are %1 to %2 digits, neither all alike nor in their order</source>
        <translation>pin : sont admis %1 à %2 chiffres, ni tous pareils ni dans leur ordre</translation>
    </message>
    <message>
        <source>bench %1: the two logs tell different things from entry %2 on; its entries were left as they are here</source>
        <translation>poste %1&#xa0;: à partir de l’entrée %2 les deux journaux divergent&#xa0;; ses entrées sont restées comme ici</translation>
    </message>
    <message>
        <source>--folder: &apos;%1&apos; cannot be written: %2</source>
        <translation>--folder : écriture de &apos;%1&apos; impossible : %2</translation>
    </message>
    <message>
        <source>not all of the log that was there could be taken along</source>
        <translation>tout ce que contenait le journal précédent n’a pas pu être repris</translation>
    </message>
    <message>
        <source>%1 entries do not follow on the rest; they are in %2</source>
        <translation>%1 entrées ne suivent pas les autres&#xa0;; elles sont dans %2</translation>
    </message>
    <message>
        <source>A verified backup into a folder; the oldest there are given up.</source>
        <translation>Une sauvegarde vérifiée dans un répertoire ; les plus anciennes y sont supprimées.</translation>
    </message>
    <message>
        <source>The folder: a stick, a share.</source>
        <translation>Le répertoire : une clé, un partage.</translation>
    </message>
    <message>
        <source>How many backups stay: 2 to 1000, 14 if not told.</source>
        <translation>Combien de sauvegardes restent&#xa0;: 2 à 1000, 14 par défaut.</translation>
    </message>
    <message>
        <source>Brings another bench’s log in; a second time adds nothing.</source>
        <translation>Importe le journal d’un autre poste ; une seconde fois n’ajoute rien.</translation>
    </message>
    <message>
        <source>The log that takes in; no bench has it open.</source>
        <translation>Le journal qui reçoit&#xa0;; aucun poste ne l’a ouvert.</translation>
    </message>
    <message>
        <source>The log that is brought in; it is only read.</source>
        <translation>Le journal importé ; il est seulement lu.</translation>
    </message>
    <message>
        <source>Only says what would be.</source>
        <translation>Dit seulement ce qui serait fait.</translation>
    </message>
    <message>
        <source>A backup in the place of the log; the PIN on standard input, if one is set.</source>
        <translation>Une sauvegarde à la place du journal ; le code sur l’entrée standard, s’il y en a un.</translation>
    </message>
    <message>
        <source>The log; it is kept in a folder beside.</source>
        <translation>Le journal ; il est gardé dans un répertoire à côté.</translation>
    </message>
    <message>
        <source>The backup.</source>
        <translation>La sauvegarde.</translation>
    </message>
    <message>
        <source>What can be read of a damaged log, as a new one.</source>
        <translation>Ce qui se lit d’un journal abîmé, comme nouveau journal.</translation>
    </message>
    <message>
        <source>The damaged log; it is only read.</source>
        <translation>Le journal abîmé&#xa0;; il est seulement lu.</translation>
    </message>
    <message>
        <source>The new log; a file that is there is never overwritten.</source>
        <translation>Le nouveau journal&#xa0;; un fichier existant n’est jamais écrasé.</translation>
    </message>
    <message>
        <source>a folder that is there</source>
        <translation>un répertoire qui existe</translation>
    </message>
    <message>
        <source>%1: &apos;%2&apos; cannot be written: %3</source>
        <translation>%1&#xa0;: écriture de &apos;%2&apos; impossible&#xa0;: %3</translation>
    </message>
    <message>
        <source>The day, by the bench&apos;s own clock; or today or yesterday, by this machine&apos;s.</source>
        <translation>Le jour, selon l’horloge du poste&#xa0;; ou today ou yesterday, selon celle de cette machine.</translation>
    </message>
    <message>
        <source>All three as day-YYYY-MM-DD.pdf, .csv and .json in a folder; none where one of them is there already.</source>
        <translation>Les trois comme day-YYYY-MM-DD.pdf, .csv et .json dans un répertoire ; aucun si l’un d’eux existe déjà.</translation>
    </message>
    <message>
        <source>sign_off, return, override, correct, forget or new_pin.</source>
        <translation>sign_off, return, override, correct, forget ou new_pin.</translation>
    </message>
    <message>
        <source>Of sign_off, return, override, correct: the repair.</source>
        <translation>De sign_off, return, override, correct&#xa0;: la réparation.</translation>
    </message>
    <message>
        <source>Of correct: what is right; of return: what is to be mended.</source>
        <translation>De correct&#xa0;: ce qui est juste&#xa0;; de return&#xa0;: ce qu’il faut reprendre.</translation>
    </message>
    <message>
        <source>Of return, override and forget: why.</source>
        <translation>De return, override et forget&#xa0;: pourquoi.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>The limits are the product sheet’s; where it is silent, the shop’s own assumptions.</source>
        <translation>Les limites sont celles de la fiche produit&#xa0;; muette, celles de l’atelier.</translation>
    </message>
    <message>
        <source>The decision table says what is filled with what; each answer carries its reason.</source>
        <translation>Le tableau de décision dit quoi avec quoi ; chaque réponse a sa raison.</translation>
    </message>
    <message>
        <source>The limits are the shop’s own and stand in bench set-up with their reason.</source>
        <translation>Les limites sont celles de l’atelier, aux réglages du poste, avec leur raison.</translation>
    </message>
    <message>
        <source>The safety data sheet says what protects you; it comes before this program.</source>
        <translation>La fiche de sécurité dit ce qui vous protège&#xa0;; elle passe avant ce programme.</translation>
    </message>
    <message>
        <source>The vehicle maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Le manuel du constructeur, les règles locales et les habilitations passent d’abord.</translation>
    </message>
    <message>
        <source>What was tapped stays in the log; a mistake is put right by a new entry.</source>
        <translation>Ce qui est touché reste au journal&#xa0;; une erreur se corrige par une entrée.</translation>
    </message>
    <message>
        <source>Dew margin and range stand in bench set-up; a product sheet may ask for more.</source>
        <translation>La marge de rosée est aux réglages du poste&#xa0;; une fiche peut demander plus.</translation>
    </message>
    <message>
        <source>Times come from sheet, air, panel and lot; what you see on the filler wins.</source>
        <translation>Les temps viennent de fiche, air, panneau et lot&#xa0;; ce que montre le mastic l’emporte.</translation>
    </message>
    <message>
        <source>Nothing of practice goes into the log of the shop.</source>
        <translation>Rien de l’exercice ne va au journal de l’atelier.</translation>
    </message>
    <message>
        <source>Where the bench stands</source>
        <translation>Où en est le poste</translation>
    </message>
    <message>
        <source>Every open repair has a card here; the running ones come first.</source>
        <translation>Chaque réparation ouverte a ici sa carte ; chrono en marche d’abord.</translation>
    </message>
    <message>
        <source>Tap a card to go on at its next step, or take in a panel.</source>
        <translation>Toucher une carte pour reprendre à son étape, ou prendre un panneau en charge.</translation>
    </message>
    <message>
        <source>With nobody named at the bench, the log cannot say who did it.</source>
        <translation>Si personne n’est nommé au poste, le journal ne dit pas qui l’a fait.</translation>
    </message>
    <message>
        <source>Taking in a panel</source>
        <translation>Prendre un panneau en charge</translation>
    </message>
    <message>
        <source>A repair begins with the job number and the name of the panel.</source>
        <translation>Une réparation commence par le numéro de dossier et le nom du panneau.</translation>
    </message>
    <message>
        <source>Key the number or scan it, then tap the panel.</source>
        <translation>Saisir le numéro ou le scanner, puis toucher le panneau.</translation>
    </message>
    <message>
        <source>Two panels of one job are two repairs; one name for both mixes them up.</source>
        <translation>Deux panneaux d’un dossier sont deux réparations&#xa0;; un seul nom les confond.</translation>
    </message>
    <message>
        <source>Who is at the bench</source>
        <translation>Qui est au poste</translation>
    </message>
    <message>
        <source>Every act in the log carries the name that stands here.</source>
        <translation>Chaque acte du journal porte le nom inscrit ici.</translation>
    </message>
    <message>
        <source>Tap your name when you take the bench over.</source>
        <translation>Toucher son nom en prenant le poste.</translation>
    </message>
    <message>
        <source>A name left over from the last shift signs for work it did not do.</source>
        <translation>Un nom resté de l’équipe d’avant signe un travail qu’il n’a pas fait.</translation>
    </message>
    <message>
        <source>What the panel is made of</source>
        <translation>De quoi est fait le panneau</translation>
    </message>
    <message>
        <source>The material decides whether it is filled, and with which filler.</source>
        <translation>La matière décide si l’on mastique, et avec quel mastic.</translation>
    </message>
    <message>
        <source>Look at the broken edge and the rear face; use what tells it for sure.</source>
        <translation>Regarder le bord cassé et le dos ; se servir de ce qui le prouve.</translation>
    </message>
    <message>
        <source>Paint hides it. Guessed wrong, the filler lets go later.</source>
        <translation>La peinture le cache. Mal deviné, le mastic lâche plus tard.</translation>
    </message>
    <message>
        <source>What the damage is</source>
        <translation>Quel est le dommage</translation>
    </message>
    <message>
        <source>Kind of damage, weld or bond decide between filling and another repair.</source>
        <translation>Le dommage, la soudure ou le collage décident entre mastic et autre réparation.</translation>
    </message>
    <message>
        <source>Look from both faces where you can; a crack often runs on behind.</source>
        <translation>Regarder des deux faces si possible ; une fissure continue souvent derrière.</translation>
    </message>
    <message>
        <source>A joint is no damage: filler over it cracks.</source>
        <translation>Un joint n’est pas un dommage&#xa0;: le mastic dessus se fissure.</translation>
    </message>
    <message>
        <source>How large it is</source>
        <translation>Sa taille</translation>
    </message>
    <message>
        <source>From the size follow the opening, the lifts and the masses of the plan.</source>
        <translation>De la taille découlent l’ouverture, les passes et les masses du plan.</translation>
    </message>
    <message>
        <source>Measure the damage itself, not the bevel; the program adds that.</source>
        <translation>Mesurer le dommage lui-même, pas le chanfrein ; le programme l’ajoute.</translation>
    </message>
    <message>
        <source>Measured too small, there is too little in the puddle and you mix again.</source>
        <translation>Mesuré trop petit, la galette est trop petite et il faut remélanger.</translation>
    </message>
    <message>
        <source>What lies on it, and where it is</source>
        <translation>Ce qu’il y a dessus, et où</translation>
    </message>
    <message>
        <source>Filler holds on sound, bare, dry material only; the place must carry no load.</source>
        <translation>Le mastic ne tient que sur du sain, nu et sec, sur pièce non porteuse.</translation>
    </message>
    <message>
        <source>Say what is there now; the plan takes it off in its steps.</source>
        <translation>Dire ce qui s’y trouve ; le plan l’enlève dans ses étapes.</translation>
    </message>
    <message>
        <source>Damp or a soft coat below stays there, and the repair comes off.</source>
        <translation>L’humidité ou une couche molle reste dessous, et la réparation se décolle.</translation>
    </message>
    <message>
        <source>Air, panel and humidity</source>
        <translation>Air, panneau et humidité</translation>
    </message>
    <message>
        <source>The reading says whether dew may form and how fast the filler gels.</source>
        <translation>La mesure dit si la rosée menace et à quelle vitesse le mastic prend.</translation>
    </message>
    <message>
        <source>Probe on the panel beside the damage; wait until it stands still.</source>
        <translation>Sonde sur le panneau à côté du dommage ; attendre qu’elle se fixe.</translation>
    </message>
    <message>
        <source>A reading of this morning says nothing about now.</source>
        <translation>Une mesure de ce matin ne dit rien de maintenant.</translation>
    </message>
    <message>
        <source>The plan</source>
        <translation>Le plan</translation>
    </message>
    <message>
        <source>It says how many lifts and batches, with what, and how long it takes.</source>
        <translation>Il dit combien de passes et de mélanges, avec quoi et combien de temps.</translation>
    </message>
    <message>
        <source>Read the reasons, look at the section, then accept it.</source>
        <translation>Lire les raisons, regarder la coupe, puis l’accepter.</translation>
    </message>
    <message>
        <source>A wrong answer makes a wrong plan: change the answer, not the work.</source>
        <translation>Une réponse fausse fait un plan faux : changer la réponse, pas le travail.</translation>
    </message>
    <message>
        <source>Stop: not to be filled</source>
        <translation>Stop&#xa0;: à ne pas mastiquer</translation>
    </message>
    <message>
        <source>It names what is wrong, why, and what to do instead.</source>
        <translation>Il nomme ce qui ne va pas, pourquoi, et que faire à la place.</translation>
    </message>
    <message>
        <source>Park the repair and hand it to the place that is named.</source>
        <translation>Mettre la réparation en attente et la remettre à l’endroit nommé.</translation>
    </message>
    <message>
        <source>Filled all the same it looks right and fails where nobody sees it.</source>
        <translation>Mastiqué quand même, cela paraît bon et lâche là où nul ne voit.</translation>
    </message>
    <message>
        <source>Gear and tools</source>
        <translation>Équipement et outils</translation>
    </message>
    <message>
        <source>What protects you is on before the first dust or vapour.</source>
        <translation>Ce qui vous protège est mis avant la première poussière ou vapeur.</translation>
    </message>
    <message>
        <source>Extraction on, then goggles, mask, gloves and closed sleeves.</source>
        <translation>Aspiration en marche, puis lunettes, masque, gants, manches fermées.</translation>
    </message>
    <message>
        <source>A disc that was on steel carries grit into aluminium, and it corrodes.</source>
        <translation>Un disque passé sur l’acier porte du grain dans l’aluminium, qui se corrode.</translation>
    </message>
    <message>
        <source>Clean and dry</source>
        <translation>Propre et sec</translation>
    </message>
    <message>
        <source>Wax, dust and solvent left behind keep the filler from holding.</source>
        <translation>Cire, poussière et solvant restants empêchent le mastic de tenir.</translation>
    </message>
    <message>
        <source>Two cloths, one way; then let it flash off until nothing smells.</source>
        <translation>Deux chiffons, un seul sens ; puis laisser évaporer jusqu’à ne plus rien sentir.</translation>
    </message>
    <message>
        <source>Sanding before degreasing rubs the wax in.</source>
        <translation>Poncer avant de dégraisser fait entrer la cire.</translation>
    </message>
    <message>
        <source>Down to sound material</source>
        <translation>Jusqu’au sain</translation>
    </message>
    <message>
        <source>Paint, loose fibre and crack tips come off, so that the filler sits on what holds.</source>
        <translation>Peinture, fibres libres, pointes de fissure partent : le mastic repose sur le solide.</translation>
    </message>
    <message>
        <source>Cut until the edge is firm all round; drill the tips the light shows.</source>
        <translation>Couper jusqu’au bord ferme ; percer les pointes que montre la lumière.</translation>
    </message>
    <message>
        <source>A tip that is missed runs on under the filler.</source>
        <translation>Une pointe oubliée continue sous le mastic.</translation>
    </message>
    <message>
        <source>The bevel</source>
        <translation>Le chanfrein</translation>
    </message>
    <message>
        <source>A long, flat run gives the filler area to hold on and no step to show.</source>
        <translation>Une pente longue et plate donne prise au mastic et ne laisse pas de marche.</translation>
    </message>
    <message>
        <source>Grind to the run on the screen, even all round, no deeper than the damage.</source>
        <translation>Meuler à la longueur affichée, égale autour, pas plus profond que le dommage.</translation>
    </message>
    <message>
        <source>Too steep, and the edge maps through the paint later.</source>
        <translation>Trop raide, et le bord se marque plus tard dans la peinture.</translation>
    </message>
    <message>
        <source>Back-up and dam</source>
        <translation>Renfort et barrage</translation>
    </message>
    <message>
        <source>A hole needs something behind it before filler goes in.</source>
        <translation>Un trou a besoin d’un appui avant le mastic.</translation>
    </message>
    <message>
        <source>Abrade the back, lap the backing past the edge, let it cure first.</source>
        <translation>Poncer le dos, faire déborder le renfort, le laisser durcir d’abord.</translation>
    </message>
    <message>
        <source>A dam only holds the filler in; it carries nothing and comes off again.</source>
        <translation>Un barrage ne fait que retenir le mastic&#xa0;; il ne porte rien et s’enlève.</translation>
    </message>
    <message>
        <source>Abrading for grip</source>
        <translation>Poncer pour l’accroche</translation>
    </message>
    <message>
        <source>Scratches of the grit named give the filler its hold.</source>
        <translation>Les rayures du grain nommé donnent son accroche au mastic.</translation>
    </message>
    <message>
        <source>Dull all over, into the corners and past the edge; then dust off.</source>
        <translation>Mat partout, dans les coins et au-delà du bord ; puis dépoussiérer.</translation>
    </message>
    <message>
        <source>A shiny spot is a spot where it lets go.</source>
        <translation>Un point brillant est un point où cela lâche.</translation>
    </message>
    <message>
        <source>The mix</source>
        <translation>Le mélange</translation>
    </message>
    <message>
        <source>Puddle and bead give the mass and the share of hardener without guessing.</source>
        <translation>La galette et le cordon donnent la masse et la part de durcisseur sans deviner.</translation>
    </message>
    <message>
        <source>Lay both to size, tap hardener in, knead without air until one colour.</source>
        <translation>Les poser à la taille, toucher « Durcisseur mis », malaxer sans air jusqu’à une couleur.</translation>
    </message>
    <message>
        <source>More hardener does not make it harder: it stains, gets hot and crazes.</source>
        <translation>Plus de durcisseur ne durcit pas mieux : il tache, chauffe et se faïence.</translation>
    </message>
    <message>
        <source>Mixing by weight</source>
        <translation>Mélanger au poids</translation>
    </message>
    <message>
        <source>The scale says what is on the board; the hardener follows from that.</source>
        <translation>La balance dit ce qui est sur la palette&#xa0;; le durcisseur en découle.</translation>
    </message>
    <message>
        <source>Tare the board, lay the filler, take the figure over, weigh the hardener.</source>
        <translation>Tarer la palette, poser le mastic, reprendre le chiffre, peser le durcisseur.</translation>
    </message>
    <message>
        <source>Forgetting the tare makes every figure too large.</source>
        <translation>Oublier la tare rend chaque chiffre trop grand.</translation>
    </message>
    <message>
        <source>Lots and what they teach</source>
        <translation>Les lots et ce qu’ils apprennent</translation>
    </message>
    <message>
        <source>Every lot gels a little faster or slower than its sheet says.</source>
        <translation>Chaque lot prend un peu plus ou moins vite que ne dit sa fiche.</translation>
    </message>
    <message>
        <source>Tell which lot is in the hand; tap when it has gelled.</source>
        <translation>Dire quel lot est en main ; signaler quand il a pris.</translation>
    </message>
    <message>
        <source>A wrong lot number teaches the wrong lot.</source>
        <translation>Un mauvais numéro fausse un autre lot.</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>Étaler</translation>
    </message>
    <message>
        <source>The filler has to be in place and its edges clear before it gels.</source>
        <translation>Le mastic doit être en place et les bords nets avant la prise.</translation>
    </message>
    <message>
        <source>Press the first coat in, then build up; clear the edges when the clock says so.</source>
        <translation>Serrer la première passe, puis charger ; dégager les bords quand le chrono le dit.</translation>
    </message>
    <message>
        <source>Worked past gel it tears and drags; what is on the board is waste by then.</source>
        <translation>Travaillé après la prise, il se déchire&#xa0;; ce qui reste est un déchet.</translation>
    </message>
    <message>
        <source>Hands off while it cures</source>
        <translation>Sans toucher pendant qu’il durcit</translation>
    </message>
    <message>
        <source>Between gel and sanding the filler gets warm and hard.</source>
        <translation>Entre la prise et le ponçage le mastic chauffe et durcit.</translation>
    </message>
    <message>
        <source>Leave it alone, no lamp; look after another repair meanwhile.</source>
        <translation>Le laisser, sans lampe ; s’occuper d’une autre réparation.</translation>
    </message>
    <message>
        <source>What is left over gets hot as well: spread it thin, away from what burns.</source>
        <translation>Le reste chauffe aussi : l’étaler mince, loin de ce qui brûle.</translation>
    </message>
    <message>
        <source>Sanding the lift</source>
        <translation>Poncer la passe</translation>
    </message>
    <message>
        <source>Each lift is sanded level so that the next one holds on it.</source>
        <translation>Chaque passe est poncée à plat pour que la suivante tienne.</translation>
    </message>
    <message>
        <source>Try with the nail; sand on a block with extraction on; then dust off.</source>
        <translation>Essayer à l’ongle ; poncer à la cale avec aspiration ; puis dépoussiérer.</translation>
    </message>
    <message>
        <source>Sanded too soon it clogs the paper and tears out at the edge.</source>
        <translation>Poncé trop tôt, il encrasse le papier et s’arrache au bord.</translation>
    </message>
    <message>
        <source>Turning the panel</source>
        <translation>Retourner le panneau</translation>
    </message>
    <message>
        <source>The other face is filled the same way; the dam comes off first.</source>
        <translation>L’autre face se mastique de même&#xa0;; le barrage s’enlève d’abord.</translation>
    </message>
    <message>
        <source>Two people for a large panel; lay it on something soft.</source>
        <translation>À deux pour un grand panneau ; le poser sur du souple.</translation>
    </message>
    <message>
        <source>Residue of the dam below the filler is a place without hold.</source>
        <translation>Sur un reste de barrage, le mastic ne tient pas.</translation>
    </message>
    <message>
        <source>To the contour</source>
        <translation>Au galbe</translation>
    </message>
    <message>
        <source>The guide coat shows what is high and low before the primer does.</source>
        <translation>Le témoin montre hauts et creux avant l’apprêt.</translation>
    </message>
    <message>
        <source>Sand on a block until it is gone; go finer only when it is level.</source>
        <translation>Poncer à la cale jusqu’à l’effacer ; affiner une fois plan.</translation>
    </message>
    <message>
        <source>Bare hands and soft pads follow a low spot instead of showing it.</source>
        <translation>La main et la cale molle suivent le creux au lieu de le montrer.</translation>
    </message>
    <message>
        <source>Looking before the primer</source>
        <translation>Regarder avant l’apprêt</translation>
    </message>
    <message>
        <source>What is found now costs minutes; under paint it costs the job.</source>
        <translation>Ce qu’on voit maintenant coûte des minutes&#xa0;; sous la peinture, tout.</translation>
    </message>
    <message>
        <source>Raking light from the side, a clean dry hand, both ways.</source>
        <translation>Lumière rasante, main propre et sèche, dans les deux sens.</translation>
    </message>
    <message>
        <source>A pinhole that is painted over comes back as a crater.</source>
        <translation>Une piqûre recouverte revient en cratère.</translation>
    </message>
    <message>
        <source>Handing over</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Six tests say what was found; the paint shop goes by them.</source>
        <translation>Six essais disent ce qui a été trouvé&#xa0;; la peinture s’y fie.</translation>
    </message>
    <message>
        <source>Do each on the panel, then tap what you found.</source>
        <translation>Faire chacun sur le panneau, puis toucher ce qu’on trouve.</translation>
    </message>
    <message>
        <source>Tapped without testing, the record tells something that nobody saw.</source>
        <translation>Touché sans essayer, le journal dit ce que nul n’a vu.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remise</translation>
    </message>
    <message>
        <source>The repair is closed; the supervisor looks through its record.</source>
        <translation>La réparation est close ; le chef d’atelier parcourt son historique.</translation>
    </message>
    <message>
        <source>Its record and job sheet are under today’s work.</source>
        <translation>Son historique et sa feuille sont dans le travail du jour.</translation>
    </message>
    <message>
        <source>A fault that shows later is a rework, taken in anew.</source>
        <translation>Un défaut apparu plus tard est une reprise, entrée à neuf.</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>En attente</translation>
    </message>
    <message>
        <source>A repair that cannot go on here waits, with its reason and its place.</source>
        <translation>Une réparation qui ne peut avancer attend, avec sa raison et son lieu.</translation>
    </message>
    <message>
        <source>Say why and where it goes; take it up again from its card.</source>
        <translation>Dire pourquoi et où ; la reprendre depuis sa carte.</translation>
    </message>
    <message>
        <source>A panel that was away may be damp or warm: it is read again.</source>
        <translation>Un panneau sorti peut être humide ou chaud : le remesurer.</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Renvoyée par le chef d’atelier</translation>
    </message>
    <message>
        <source>The supervisor found something; what it was stands here.</source>
        <translation>Le chef d’atelier a trouvé quelque chose&#xa0;; c’est écrit ici.</translation>
    </message>
    <message>
        <source>Begin the rework: it is a repair of its own, from the first question.</source>
        <translation>Commencer la reprise : une réparation à part, dès la première question.</translation>
    </message>
    <message>
        <source>Mended without a record it is not there at the next look.</source>
        <translation>Réparé sans trace, cela manque à la prochaine revue.</translation>
    </message>
    <message>
        <source>Stop and ask</source>
        <translation>Arrêter et demander</translation>
    </message>
    <message>
        <source>Whoever is in doubt stops here; running clocks go on.</source>
        <translation>Qui doute s’arrête ici ; les chronos continuent.</translation>
    </message>
    <message>
        <source>Take a photo, write a note, or park the repair and fetch the supervisor.</source>
        <translation>Prendre une photo, écrire une note, ou mettre en attente et appeler le chef d’atelier.</translation>
    </message>
    <message>
        <source>Going on in doubt costs more than the wait.</source>
        <translation>Continuer dans le doute coûte plus que l’attente.</translation>
    </message>
    <message>
        <source>What can hurt here</source>
        <translation>Ce qui peut blesser ici</translation>
    </message>
    <message>
        <source>It shows label, gloves, mask, first aid and waste of each material of this step.</source>
        <translation>Montre étiquette, gants, masque, premiers secours et déchets de chaque matière.</translation>
    </message>
    <message>
        <source>Page through before you open the tin.</source>
        <translation>Parcourir les pages avant d’ouvrir le pot.</translation>
    </message>
    <message>
        <source>What stands here in general does not replace the sheet of the product.</source>
        <translation>Ce qui est dit en général ne remplace pas la fiche du produit.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Four photos show what no word does: as found, bare, filled, guide coat.</source>
        <translation>Quatre photos montrent ce qu’aucun mot ne dit&#xa0;: trouvé, nu, mastiqué, témoin.</translation>
    </message>
    <message>
        <source>Same place, same light, something beside it for the size.</source>
        <translation>Même endroit, même lumière, un repère pour la taille.</translation>
    </message>
    <message>
        <source>A photo taken after the filler shows nothing of what lies below.</source>
        <translation>Une photo après le mastic ne montre rien du dessous.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>A note keeps what no step asks: an old repair, a warmed panel.</source>
        <translation>Une note garde ce qu’aucune étape ne demande&#xa0;: vieille réparation, panneau chauffé.</translation>
    </message>
    <message>
        <source>Tap a sentence, or write your own words.</source>
        <translation>Toucher une phrase, ou écrire la sienne.</translation>
    </message>
    <message>
        <source>A note cannot be taken back; write a second one.</source>
        <translation>Une note ne se retire pas ; en écrire une autre.</translation>
    </message>
    <message>
        <source>Today’s work</source>
        <translation>Le travail du jour</translation>
    </message>
    <message>
        <source>Every repair that was worked on today, with how it stands.</source>
        <translation>Chaque réparation travaillée aujourd’hui, et où elle en est.</translation>
    </message>
    <message>
        <source>Tap one for its record; look for older ones by a word or a lot.</source>
        <translation>En toucher une pour son historique ; chercher les anciennes par mot ou lot.</translation>
    </message>
    <message>
        <source>A repair without a sign-off stays on the supervisor’s list.</source>
        <translation>Une réparation sans visa reste sur la liste du chef d’atelier.</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>L’historique de la réparation</translation>
    </message>
    <message>
        <source>It shows what was done, when and by whom, and where limits were left.</source>
        <translation>Il montre quoi, quand et qui, et où l’on est sorti des limites.</translation>
    </message>
    <message>
        <source>Page through; time line and lots are a tap away.</source>
        <translation>Parcourir ; la chronologie et les lots sont à un appui.</translation>
    </message>
    <message>
        <source>Nothing here can be wiped out; a correction stands beside what it corrects.</source>
        <translation>Rien ne s’efface&#xa0;; une correction reste à côté de ce qu’elle corrige.</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Sur papier</translation>
    </message>
    <message>
        <source>The same figures as on the glass, to go with the panel or into a folder.</source>
        <translation>Les mêmes chiffres qu’à l’écran, pour le panneau ou le classeur.</translation>
    </message>
    <message>
        <source>Choose the paper, then a folder or the printer.</source>
        <translation>Choisir le papier, puis un répertoire ou l’imprimante.</translation>
    </message>
    <message>
        <source>A paper is of the moment it was made; the log goes on.</source>
        <translation>Un papier date de son impression ; le journal continue.</translation>
    </message>
    <message>
        <source>The air</source>
        <translation>L’air</translation>
    </message>
    <message>
        <source>It shows how far the panel is from dew, and what vapours do in this room.</source>
        <translation>Montre la distance à la rosée, et les vapeurs dans ce local.</translation>
    </message>
    <message>
        <source>Read air, panel and humidity close to the repair.</source>
        <translation>Mesurer air, panneau et humidité près de la réparation.</translation>
    </message>
    <message>
        <source>The room is worked out as one box; near the tin it is always worse.</source>
        <translation>Le local est calculé comme une boîte ; près du pot c’est toujours pire.</translation>
    </message>
    <message>
        <source>The supervisor’s acts</source>
        <translation>Les actes du chef d’atelier</translation>
    </message>
    <message>
        <source>Overriding, correcting and signing off are the supervisor’s, by PIN.</source>
        <translation>Passer outre, corriger et viser : au chef d’atelier, par code.</translation>
    </message>
    <message>
        <source>Say the reason first; it stands in the log with the act.</source>
        <translation>Dire d’abord la raison ; elle reste au journal avec l’acte.</translation>
    </message>
    <message>
        <source>A PIN that is known to all signs for all.</source>
        <translation>Un code connu de tous signe pour tous.</translation>
    </message>
    <message>
        <source>Looking through the day</source>
        <translation>Parcourir la journée</translation>
    </message>
    <message>
        <source>What needs eyes stands on top: deviations, gaps, what is not signed off.</source>
        <translation>En haut ce qui demande un regard&#xa0;: écarts, manques, non visé.</translation>
    </message>
    <message>
        <source>Open a repair, read what its record lacks, sign it off or return it.</source>
        <translation>Ouvrir une réparation, lire ce qui manque, viser ou renvoyer.</translation>
    </message>
    <message>
        <source>Signed off unread, a deviation is nobody’s any more.</source>
        <translation>Visé sans lire, un écart n’est plus à personne.</translation>
    </message>
    <message>
        <source>Figures over time</source>
        <translation>Les chiffres dans le temps</translation>
    </message>
    <message>
        <source>Each figure answers one question over many repairs.</source>
        <translation>Chaque chiffre répond à une question sur beaucoup de réparations.</translation>
    </message>
    <message>
        <source>Choose the period, tap a figure, then a bar to see its repairs.</source>
        <translation>Choisir la période, toucher un chiffre, puis une barre.</translation>
    </message>
    <message>
        <source>Few repairs say little: the count stands beside each figure.</source>
        <translation>Peu de réparations disent peu&#xa0;: le nombre est à côté.</translation>
    </message>
    <message>
        <source>Looking for a repair</source>
        <translation>Chercher une réparation</translation>
    </message>
    <message>
        <source>Job, panel, person, lot and words of notes of every day are searched.</source>
        <translation>On cherche dossier, panneau, personne, lot et notes de tous les jours.</translation>
    </message>
    <message>
        <source>Key the beginning of a word, or scan a lot; tap what is found.</source>
        <translation>Saisir le début d’un mot, ou scanner un lot ; toucher le résultat.</translation>
    </message>
    <message>
        <source>The middle of a word finds nothing; fewer letters find more.</source>
        <translation>Le milieu d’un mot ne trouve rien&#xa0;; moins de lettres trouvent plus.</translation>
    </message>
    <message>
        <source>The shelf</source>
        <translation>Le stock</translation>
    </message>
    <message>
        <source>It counts what is there, by lot, and tells what is short, old or dry.</source>
        <translation>Il compte ce qui est là, par lot, et dit ce qui manque, périme ou sèche.</translation>
    </message>
    <message>
        <source>Book in what comes; each batch is taken off by itself.</source>
        <translation>Enregistrer ce qui arrive ; chaque mélange se déduit tout seul.</translation>
    </message>
    <message>
        <source>What is spilled and not told makes the shelf look fuller than it is.</source>
        <translation>Ce qui est renversé sans être dit fait paraître le stock plus fourni.</translation>
    </message>
    <message>
        <source>Booking in</source>
        <translation>Enregistrer l’entrée</translation>
    </message>
    <message>
        <source>A package gets its lot and its date, so that a batch can be traced to it.</source>
        <translation>Un emballage reçoit lot et date, pour y remonter depuis un mélange.</translation>
    </message>
    <message>
        <source>Scan or key the lot from the label, then its best-before day.</source>
        <translation>Scanner ou saisir le lot de l’étiquette, puis sa date limite.</translation>
    </message>
    <message>
        <source>A lot from memory is a lot that a recall does not find.</source>
        <translation>Noté de mémoire, un lot échappe au rappel.</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Ce qu’il en est advenu</translation>
    </message>
    <message>
        <source>Count, spill, move or throw away: the shelf is put right by telling.</source>
        <translation>Compté, renversé, déplacé, jeté : le dire remet le stock à jour.</translation>
    </message>
    <message>
        <source>Say what happened and how much; nothing is wiped out.</source>
        <translation>Dire quoi et combien ; rien n’est effacé.</translation>
    </message>
    <message>
        <source>Old peroxide is waste of its own; never into the bin or a warm corner.</source>
        <translation>Le vieux peroxyde est un déchet à part&#xa0;; ni poubelle ni coin chaud.</translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Fiches produit</translation>
    </message>
    <message>
        <source>What a filler may and how fast it gels comes from its sheet.</source>
        <translation>Ce que peut un mastic et sa prise viennent de sa fiche.</translation>
    </message>
    <message>
        <source>Type it from the maker’s paper, or read it from a file.</source>
        <translation>La saisir d’après le papier du fabricant, ou lire un fichier.</translation>
    </message>
    <message>
        <source>A demo sheet is invented: never mend a customer’s panel by it.</source>
        <translation>Une fiche de démo est inventée : jamais pour le panneau d’un client.</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Réglages du poste</translation>
    </message>
    <message>
        <source>Language, units, glass, instruments and the shop’s own limits are set here.</source>
        <translation>Langue, unités, écran, instruments et limites de l’atelier se règlent ici.</translation>
    </message>
    <message>
        <source>Measure the glass once with a card; then the drawn sizes are true.</source>
        <translation>Mesurer l’écran une fois avec une carte ; les tailles dessinées sont alors vraies.</translation>
    </message>
    <message>
        <source>A limit changed here changes every plan from now on.</source>
        <translation>Une limite changée ici change tout plan à venir.</translation>
    </message>
    <message>
        <source>Keeping the log</source>
        <translation>Garder le journal</translation>
    </message>
    <message>
        <source>Backups, bringing in another bench’s log, and putting a backup back.</source>
        <translation>Sauvegardes, journal d’un autre poste, remise d’une sauvegarde.</translation>
    </message>
    <message>
        <source>Choose the file; what would come of it is told before it is done.</source>
        <translation>Choisir le fichier ; le résultat est annoncé avant.</translation>
    </message>
    <message>
        <source>A backup on the same disk is lost with the disk.</source>
        <translation>Une sauvegarde sur le même disque part avec lui.</translation>
    </message>
    <message>
        <source>Practising</source>
        <translation>S’exercer</translation>
    </message>
    <message>
        <source>Invented panels to learn on: look, decide, mix by eye, and see what comes of it.</source>
        <translation>Panneaux inventés pour apprendre&#xa0;: regarder, décider, mélanger, voir la suite.</translation>
    </message>
    <message>
        <source>Answer from what the panel shows; marks and reasons come at the end.</source>
        <translation>Répondre d’après ce que montre le panneau ; correction et raisons à la fin.</translation>
    </message>
    <message>
        <source>Help does not say here what is asked; the bench’s own help does.</source>
        <translation>L’aide ne dit pas ici ce qui est demandé&#xa0;; celle du poste, si.</translation>
    </message>
</context>
<context>
    <name>Instruments</name>
    <message>
        <source>Nothing is plugged in at %1.</source>
        <translation>Rien n’est branché sur %1.</translation>
    </message>
    <message>
        <source>Another program has %1.</source>
        <translation>Un autre programme occupe %1.</translation>
    </message>
    <message>
        <source>This account may not open %1.</source>
        <translation>Ce compte ne peut pas ouvrir %1.</translation>
    </message>
    <message>
        <source>The instrument was pulled out.</source>
        <translation>L’instrument a été débranché.</translation>
    </message>
    <message>
        <source>%1 does not open.</source>
        <translation>%1 ne s’ouvre pas.</translation>
    </message>
    <message>
        <source>Plug it in and switch it on: it is taken up by itself.</source>
        <translation>Le brancher et l’allumer&#xa0;: il est repris tout seul.</translation>
    </message>
    <message>
        <source>Close the other program: the port is taken up by itself.</source>
        <translation>Fermer l’autre programme&#xa0;: le port est repris tout seul.</translation>
    </message>
    <message>
        <source>Let the system’s keeper put this account in the group of serial ports.</source>
        <translation>Faire ajouter ce compte au groupe des ports série par l’administrateur.</translation>
    </message>
    <message>
        <source>The system says: %1.</source>
        <translation>Le système dit&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No instrument is set up.</source>
        <translation>Aucun instrument configuré.</translation>
    </message>
    <message>
        <source>No pattern is chosen for its lines.</source>
        <translation>Aucun modèle choisi pour ses lignes.</translation>
    </message>
    <message>
        <source>The pattern cannot be used.</source>
        <translation>Le modèle est inutilisable.</translation>
    </message>
    <message>
        <source>Connected: waiting for its lines.</source>
        <translation>Branché&#xa0;: attente de ses lignes.</translation>
    </message>
    <message>
        <source>The instrument says nothing.</source>
        <translation>L’instrument ne dit rien.</translation>
    </message>
    <message>
        <source>What comes is no plain text.</source>
        <translation>Ce qui arrive n’est pas du texte.</translation>
    </message>
    <message>
        <source>What it says cannot be.</source>
        <translation>Ce qu’il dit est impossible.</translation>
    </message>
    <message>
        <source>Its line does not fit the pattern.</source>
        <translation>Sa ligne ne suit pas le modèle.</translation>
    </message>
    <message>
        <source>%1, not steady yet</source>
        <translation>%1, pas encore stable</translation>
    </message>
    <message>
        <source>%1, steady</source>
        <translation>%1, stable</translation>
    </message>
    <message>
        <source>Its lines have stopped.</source>
        <translation>Ses lignes ont cessé.</translation>
    </message>
    <message>
        <source>Choose one, or write it.</source>
        <translation>En choisir un, ou l’écrire.</translation>
    </message>
    <message>
        <source>Look at cable and switch, and set it to send by itself.</source>
        <translation>Voir câble et interrupteur, et le régler en envoi continu.</translation>
    </message>
    <message>
        <source>Try another speed or frame.</source>
        <translation>Essayer une autre vitesse ou trame.</translation>
    </message>
    <message>
        <source>Choose another pattern, or write one like the line.</source>
        <translation>Choisir un autre modèle, ou en écrire un comme la ligne.</translation>
    </message>
</context>
<context>
    <name>JobSheet</name>
    <message>
        <source>The safety data sheet, the vehicle maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Priment : fiche de sécurité, manuel du constructeur, règles locales, habilitations.</translation>
    </message>
    <message>
        <source>Log %1…, entries: %2</source>
        <extracomment>%1 is the beginning of a hash, %2 how many entries the log had</extracomment>
        <translation>Journal %1…, entrées&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a sheet: &quot;1 of 3&quot;</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>End of the chain</source>
        <translation>Fin de la chaîne</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entrées</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Poste</translation>
    </message>
    <message>
        <source>Work of %1</source>
        <extracomment>%1 is a day, &quot;2026-11-25&quot;</extracomment>
        <translation>Travail du %1</translation>
    </message>
    <message>
        <source>Nothing was recorded on this day.</source>
        <translation>Rien n’a été enregistré ce jour.</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panneau</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Écarts</translation>
    </message>
    <message>
        <source>Job sheet · %1 · %2 · %3</source>
        <translation>Feuille de travail · %1 · %2 · %3</translation>
    </message>
    <message>
        <source>Day sheet · %1</source>
        <translation>Feuille du jour · %1</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Entré</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message>
        <source>From first to last act</source>
        <translation>Première à dernière action</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>%1 (before: %2)</source>
        <translation>%1 (avant&#xa0;: %2)</translation>
    </message>
    <message>
        <source>%1 (asked again later)</source>
        <translation>%1 (redemandé ensuite)</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Question</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Réponse</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Dew point</source>
        <translation>Point de rosée</translation>
    </message>
    <message>
        <source>Panel above it</source>
        <translation>Marge de rosée</translation>
    </message>
    <message>
        <source>lift %1, %2</source>
        <translation>passe %1, %2</translation>
    </message>
    <message>
        <source>coat %1</source>
        <translation>couche %1</translation>
    </message>
    <message>
        <source>%1 (demo sheet)</source>
        <translation>%1 (fiche de démo)</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Batches: what was mixed</source>
        <translation>Mélanges&#xa0;: quantités</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Fiche</translation>
    </message>
    <message>
        <source>Filler lot</source>
        <translation>Lot mastic</translation>
    </message>
    <message>
        <source>Hardener lot</source>
        <translation>Lot durcisseur</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Prévu</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Mélangé</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>Hardener in</source>
        <translation>Durcisseur mis</translation>
    </message>
    <message>
        <source>Batches: their clocks</source>
        <translation>Mélanges&#xa0;: leurs temps</translation>
    </message>
    <message>
        <source>From &apos;hardener in&apos;, as told / as predicted when it was mixed.</source>
        <translation>Depuis «&#xa0;durcisseur mis&#xa0;»&#xa0;: indiqué / prévu lors du mélange.</translation>
    </message>
    <message>
        <source>Set on the board</source>
        <translation>Pris sur la palette</translation>
    </message>
    <message>
        <source>Edges clear</source>
        <translation>Bords dégagés</translation>
    </message>
    <message>
        <source>Set on the panel</source>
        <translation>Pris sur le panneau</translation>
    </message>
    <message>
        <source>Sands</source>
        <translation>Ponçable</translation>
    </message>
    <message>
        <source>Sanded</source>
        <translation>Poncé</translation>
    </message>
    <message>
        <source>What was laid</source>
        <translation>Couches posées</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Couche</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Mastic</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Mélanges</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Dès</translation>
    </message>
    <message>
        <source>Turn the panel</source>
        <translation>Retourner le panneau</translation>
    </message>
    <message>
        <source>Panel turned</source>
        <translation>Panneau retourné</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Told</source>
        <translation>Indiqué</translation>
    </message>
    <message>
        <source>still parked</source>
        <translation>encore en attente</translation>
    </message>
    <message>
        <source>assessed again</source>
        <translation>réévalué</translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation>repris</translation>
    </message>
    <message>
        <source>Parked</source>
        <translation>En attente</translation>
    </message>
    <message>
        <source>When, who</source>
        <translation>Quand, qui</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu’à</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>non fait</translation>
    </message>
    <message>
        <source>Hand-over tests</source>
        <translation>Essais de remise</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Essai</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Coupe</translation>
    </message>
    <message>
        <source>To scale; depth drawn %1 times as large as width.</source>
        <translation>À l’échelle&#xa0;; profondeur grossie %1 fois la largeur.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Plan %1</source>
        <translation>Plan %1</translation>
    </message>
    <message>
        <source>Accepted %1</source>
        <translation>Accepté %1</translation>
    </message>
    <message>
        <source>Another plan took its place.</source>
        <translation>Remplacé par un autre plan.</translation>
    </message>
    <message>
        <source>Filler in all</source>
        <translation>Mastic en tout</translation>
    </message>
    <message>
        <source>Hardener in all</source>
        <translation>Durcisseur en tout</translation>
    </message>
    <message>
        <source>Cavity</source>
        <translation>Cavité</translation>
    </message>
    <message>
        <source>Built proud</source>
        <translation>Surépaisseur</translation>
    </message>
    <message>
        <source>Cure shrinkage</source>
        <translation>Retrait de prise</translation>
    </message>
    <message>
        <source>Left on the board</source>
        <translation>Reste sur palette</translation>
    </message>
    <message>
        <source>Heat limit</source>
        <translation>Limite chaleur</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Finition</translation>
    </message>
    <message>
        <source>%1, %2 in all; coats: %3; at most %4 a coat and %5 in all; %6</source>
        <translation>%1, %2 en tout&#xa0;; couches&#xa0;: %3&#xa0;; au plus %4 par couche et %5 en tout&#xa0;; %6</translation>
    </message>
    <message>
        <source>Ready for primer</source>
        <translation>Prêt pour l’apprêt</translation>
    </message>
    <message>
        <source>%1 after accepting</source>
        <translation>%1 après acceptation</translation>
    </message>
    <message>
        <source>Times from</source>
        <translation>Temps selon</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Passe</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Hottest</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Puddle</source>
        <translation>Galette</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Bead</source>
        <translation>Cordon</translation>
    </message>
    <message>
        <source>Board sets</source>
        <translation>Prise palette</translation>
    </message>
    <message>
        <source>Panel sets</source>
        <translation>Prise panneau</translation>
    </message>
    <message>
        <source>Not %1: %2</source>
        <translation>Pas %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: the picture cannot be read</source>
        <translation>%1&#xa0;: image illisible</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>No photo: %1</source>
        <translation>Sans photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>No code: what it would hold is too long for one.</source>
        <translation>Pas de code&#xa0;: son contenu serait trop long.</translation>
    </message>
    <message>
        <source>In the code: what this sheet is of, and the end of the log’s chain when it was printed.</source>
        <translation>Dans le code&#xa0;: ce que concerne cette feuille, et la fin de la chaîne du journal à l’impression.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Technicien</translation>
    </message>
    <message>
        <source>Supervisor</source>
        <translation>Chef d’atelier</translation>
    </message>
    <message>
        <source>Signed off by %1, %2</source>
        <extracomment>%1 is a person, %2 a day and a time</extracomment>
        <translation>Visé par %1, %2</translation>
    </message>
    <message>
        <source>Returned by %1, %2: %3</source>
        <extracomment>%1 is a person, %2 a day and a time, %3 why</extracomment>
        <translation>Renvoyé par %1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Its rework is not taken in yet</source>
        <extracomment>%1 is the id of a repair</extracomment>
        <translation>Sa reprise n’est pas encore entrée</translation>
    </message>
    <message>
        <source>Done again as repair %1</source>
        <translation>Refait comme réparation %1</translation>
    </message>
    <message>
        <source>Not signed yet</source>
        <translation>Pas encore visé</translation>
    </message>
    <message>
        <source>Rework of repair %1</source>
        <extracomment>%1 is the id of a repair</extracomment>
        <translation>Reprise de la réparation %1</translation>
    </message>
    <message>
        <source>Sign-off</source>
        <translation>Visa</translation>
    </message>
    <message>
        <source>What the log says</source>
        <translation>Ce que dit le journal</translation>
    </message>
</context>
<context>
    <name>Keeping</name>
    <message numerus="yes">
        <source>%n act(s) do not follow on the restored log.</source>
        <translation>
            <numerusform>%n action ne suit pas le journal restauré.</numerusform>
            <numerusform>%n actions ne suivent pas le journal restauré.</numerusform>
        </translation>
    </message>
    <message>
        <source>Note them in the repair by hand.</source>
        <translation>Les noter à la main dans la réparation.</translation>
    </message>
</context>
<context>
    <name>KeepingScreens</name>
    <message>
        <source>The log there is damaged.</source>
        <translation>Le journal en place est abîmé.</translation>
    </message>
    <message>
        <source>%1 of its entries can be read and do not follow.</source>
        <translation>%1 de ses entrées se lisent mais ne suivent pas.</translation>
    </message>
    <message>
        <source>From one entry on it tells other things than the backup.</source>
        <translation>À partir d’une entrée il diffère de la sauvegarde.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Which backup?</source>
        <translation>Quelle sauvegarde&#xa0;?</translation>
    </message>
    <message>
        <source>Which log is to be brought in?</source>
        <translation>Quel journal importer ?</translation>
    </message>
    <message>
        <source>There is none in this folder.</source>
        <translation>Il n’y en a pas dans ce répertoire.</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Autre répertoire</translation>
    </message>
    <message>
        <source>bench %1 · %2 entries</source>
        <extracomment>%1 is a bench&apos;s name, %2 a number</extracomment>
        <translation>poste %1 · %2 entrées</translation>
    </message>
    <message>
        <source>One moment …</source>
        <translation>Un instant…</translation>
    </message>
    <message>
        <source>Looking through both logs</source>
        <translation>Les deux journaux sont parcourus</translation>
    </message>
    <message>
        <source>The backup takes the log’s place</source>
        <translation>La sauvegarde prend la place du journal</translation>
    </message>
    <message>
        <source>The log is brought in</source>
        <translation>Le journal est importé</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Rien n’est encore modifié.</translation>
    </message>
    <message>
        <source>Do not switch off. Running clocks go on.</source>
        <translation>Ne pas éteindre. Les chronos en cours continuent.</translation>
    </message>
    <message>
        <source>Bring it in</source>
        <translation>L’importer</translation>
    </message>
    <message>
        <source>Bring this log in?</source>
        <translation>Importer ce journal ?</translation>
    </message>
    <message>
        <source>It was brought in</source>
        <translation>Il est importé</translation>
    </message>
    <message>
        <source>There is nothing new in it</source>
        <translation>Il n’apporte rien de nouveau</translation>
    </message>
    <message>
        <source>%1 entries, %2 repairs</source>
        <translation>%1 entrées, %2 réparations</translation>
    </message>
    <message>
        <source>Bench %1: both logs go on differently from entry %2. Its entries stay as they are here.</source>
        <translation>Poste %1&#xa0;: dès l’entrée %2 les journaux divergent. Ses entrées restent comme ici.</translation>
    </message>
    <message>
        <source>Open at two benches: %1, %2.</source>
        <translation>Ouvert à deux postes&#xa0;: %1, %2.</translation>
    </message>
    <message>
        <source>Nothing that is here is changed. Repairs of another bench go on at that bench.</source>
        <translation>Rien d’ici n’est modifié. Les réparations d’un autre poste continuent à ce poste.</translation>
    </message>
    <message>
        <source>Restore it</source>
        <translation>La restaurer</translation>
    </message>
    <message>
        <source>Put this backup in the log’s place?</source>
        <translation>Mettre cette sauvegarde à la place du journal&#xa0;?</translation>
    </message>
    <message>
        <source>The backup is in its place</source>
        <translation>La sauvegarde est en place</translation>
    </message>
    <message>
        <source>Nothing is lost: %1 entries</source>
        <translation>Rien n’est perdu&#xa0;: %1 entrées</translation>
    </message>
    <message>
        <source>Not all can be kept: %1 entries</source>
        <translation>Tout ne peut être gardé&#xa0;: %1 entrées</translation>
    </message>
    <message>
        <source>The backup has %1 entries.</source>
        <translation>La sauvegarde a %1 entrées.</translation>
    </message>
    <message>
        <source>%1 newer ones come along from the log.</source>
        <translation>%1 plus récentes viennent du journal.</translation>
    </message>
    <message>
        <source>The log that is there now is kept in a folder beside it, whole.</source>
        <translation>Le journal actuel est gardé entier dans un répertoire à côté.</translation>
    </message>
    <message>
        <source>The earlier log lies in %1.</source>
        <translation>Le journal précédent est dans %1.</translation>
    </message>
    <message>
        <source>It was not restored</source>
        <translation>Rien n’a été restauré</translation>
    </message>
    <message>
        <source>It was not brought in</source>
        <translation>Rien n’a été importé</translation>
    </message>
</context>
<context>
    <name>KeyPad</name>
    <message>
        <source>Clear</source>
        <translation>Effacer</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Virgule</translation>
    </message>
</context>
<context>
    <name>LetterKeys</name>
    <message>
        <source>Space</source>
        <extracomment>short: a key of 20 mm</extracomment>
        <translation>Espace</translation>
    </message>
    <message>
        <source>Erase</source>
        <extracomment>short: a key of 20 mm; takes the last letter away</extracomment>
        <translation>Effacer</translation>
    </message>
</context>
<context>
    <name>LogTrouble</name>
    <message>
        <source>the database file itself is damaged</source>
        <translation>le fichier de la base est lui-même abîmé</translation>
    </message>
    <message>
        <source>its tables are not those of this program</source>
        <translation>ses tables ne sont pas celles de ce programme</translation>
    </message>
    <message>
        <source>an entry was changed, removed or put in</source>
        <translation>une entrée a été modifiée, ôtée ou ajoutée</translation>
    </message>
    <message>
        <source>an entry cannot be read, or cannot follow the one before</source>
        <translation>une entrée est illisible, ou ne peut suivre la précédente</translation>
    </message>
    <message>
        <source>a summary does not match its entries</source>
        <translation>un résumé ne correspond pas à ses entrées</translation>
    </message>
    <message>
        <source>a stored sheet or table was changed</source>
        <translation>une fiche ou table stockée a été modifiée</translation>
    </message>
    <message>
        <source>the expected end of the chain is not in it</source>
        <translation>la fin attendue de la chaîne n’y est pas</translation>
    </message>
    <message>
        <source>The log cannot be opened.</source>
        <translation>Le journal ne s’ouvre pas.</translation>
    </message>
    <message>
        <source>Check that its folder is there and may be used.</source>
        <translation>Vérifier que son répertoire existe et est accessible.</translation>
    </message>
    <message>
        <source>This file is not a log.</source>
        <translation>Ce fichier n’est pas un journal.</translation>
    </message>
    <message>
        <source>Choose another file; this one is left as it is.</source>
        <translation>Choisir un autre fichier&#xa0;; celui-ci reste tel quel.</translation>
    </message>
    <message>
        <source>This database belongs to another program.</source>
        <translation>Cette base est celle d’un autre programme.</translation>
    </message>
    <message>
        <source>A newer version of this program wrote the log.</source>
        <translation>Une version plus récente a écrit ce journal.</translation>
    </message>
    <message>
        <source>Use that version; the log is left as it is.</source>
        <translation>Prendre cette version&#xa0;; le journal reste tel quel.</translation>
    </message>
    <message>
        <source>The log can be read but not written.</source>
        <translation>Le journal se lit mais ne s’écrit pas.</translation>
    </message>
    <message>
        <source>Give the right to write to the file and its folder.</source>
        <translation>Donner le droit d’écrire dans le fichier et son répertoire.</translation>
    </message>
    <message>
        <source>Another program holds the log.</source>
        <translation>Un autre programme tient le journal.</translation>
    </message>
    <message>
        <source>Close it, then try again.</source>
        <translation>Le fermer, puis réessayer.</translation>
    </message>
    <message>
        <source>The disk is full.</source>
        <translation>Le disque est plein.</translation>
    </message>
    <message>
        <source>Make room, then try again. The last confirmed step is kept.</source>
        <translation>Faire de la place, puis réessayer. La dernière étape confirmée est gardée.</translation>
    </message>
    <message>
        <source>The log is damaged.</source>
        <translation>Le journal est abîmé.</translation>
    </message>
    <message>
        <source>Keep the file as it is and fetch the last backup.</source>
        <translation>Garder le fichier tel quel, prendre la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The disk does not answer.</source>
        <translation>Le disque ne répond pas.</translation>
    </message>
    <message>
        <source>Check disk and cable, then try again. The last confirmed step is kept.</source>
        <translation>Vérifier disque et câble, puis réessayer. La dernière étape confirmée est gardée.</translation>
    </message>
    <message>
        <source>This panel is already open in this job.</source>
        <translation>Ce panneau est déjà ouvert dans ce dossier.</translation>
    </message>
    <message>
        <source>Open its card, or give this panel another name.</source>
        <translation>Ouvrir sa carte, ou nommer ce panneau autrement.</translation>
    </message>
    <message>
        <source>This step does not follow the last one.</source>
        <translation>Cette étape ne suit pas la dernière.</translation>
    </message>
    <message>
        <source>Go back home and open the card again.</source>
        <translation>Revenir à l’accueil et rouvrir la carte.</translation>
    </message>
    <message>
        <source>Another copy of the program has this bench.</source>
        <translation>Une autre copie du programme tient ce poste.</translation>
    </message>
    <message>
        <source>Work there, or close it and try again.</source>
        <translation>Y travailler, ou la fermer et réessayer.</translation>
    </message>
    <message>
        <source>This is the supervisor’s to do.</source>
        <translation>C’est au chef d’atelier de le faire.</translation>
    </message>
    <message>
        <source>It needs the supervisor’s PIN.</source>
        <translation>Il faut le code du chef d’atelier.</translation>
    </message>
    <message>
        <source>The log’s file is not all there.</source>
        <translation>Le fichier du journal n’est pas complet.</translation>
    </message>
    <message>
        <source>Copy it again from where it came, or fetch the last backup.</source>
        <translation>Le recopier depuis sa source, ou prendre la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The log is no longer where it was.</source>
        <translation>Le journal n’est plus à sa place.</translation>
    </message>
    <message>
        <source>Put its disk or its folder back. The last confirmed step is kept.</source>
        <translation>Remettre son disque ou son répertoire. La dernière étape confirmée est gardée.</translation>
    </message>
    <message>
        <source>Another log lies there now.</source>
        <translation>Un autre journal s’y trouve à présent.</translation>
    </message>
    <message>
        <source>It lacks steps that were confirmed here. Put the right one back.</source>
        <translation>Il y manque des étapes confirmées ici. Remettre le bon.</translation>
    </message>
    <message>
        <source>An older version of this program wrote the log.</source>
        <translation>Une version plus ancienne du programme a écrit le journal.</translation>
    </message>
    <message>
        <source>It can be brought up to this version. A copy as it is stays beside it, for the older program.</source>
        <translation>Il peut passer à cette version. Une copie telle quelle reste à côté, pour l’ancien programme.</translation>
    </message>
</context>
<context>
    <name>LotListScreen</name>
    <message>
        <source>%1 · hardener lot %2</source>
        <translation>%1 · lot de durcisseur %2</translation>
    </message>
</context>
<context>
    <name>LotPageScreen</name>
    <message>
        <source>Why is it to be forgotten?</source>
        <translation>Pourquoi faut-il l’oublier&#xa0;?</translation>
    </message>
    <message>
        <source>What it taught</source>
        <translation>Ce qu’il a appris</translation>
    </message>
</context>
<context>
    <name>Lots</name>
    <message>
        <source>Lots were mixed up</source>
        <translation>Des lots ont été confondus</translation>
    </message>
    <message>
        <source>Gels were told too late or too early</source>
        <translation>Prise signalée trop tard ou trop tôt</translation>
    </message>
    <message>
        <source>Hardener was laid wrong</source>
        <translation>Durcisseur mal posé</translation>
    </message>
    <message>
        <source>The tube has been too hot or too cold</source>
        <translation>Le tube a eu trop chaud ou trop froid</translation>
    </message>
    <message>
        <source>as the sheet says</source>
        <translation>comme dit la fiche</translation>
    </message>
    <message>
        <source>cures as its sheet says</source>
        <translation>durcit comme dit sa fiche</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>of how fast a batch cures: &quot;6 % slower to 23 % faster&quot;</extracomment>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>no gel told: teaches nothing</source>
        <translation>prise non signalée&#xa0;: n’apprend rien</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>compte</translation>
    </message>
    <message>
        <source>counts: cured at least so fast</source>
        <translation>compte&#xa0;: a durci au moins aussi vite</translation>
    </message>
    <message>
        <source>held: too far off, three in a row would count</source>
        <translation>écarté&#xa0;: trop loin, trois de suite compteraient</translation>
    </message>
    <message>
        <source>no longer counts: the lot proved to be different</source>
        <translation>ne compte plus&#xa0;: le lot s’est avéré différent</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Galette d’essai</translation>
    </message>
    <message>
        <source>board set after %1, by the sheet %2</source>
        <translation>palette prise après %1, selon la fiche %2</translation>
    </message>
    <message>
        <source>panel set after %1, by the sheet %2</source>
        <translation>panneau pris après %1, selon la fiche %2</translation>
    </message>
    <message>
        <source>sanded from %1, by the sheet %2</source>
        <translation>poncé dès %1, selon la fiche %2</translation>
    </message>
    <message>
        <source>%1 faster</source>
        <translation>%1 plus vite</translation>
    </message>
    <message>
        <source>%1 slower</source>
        <translation>%1 moins vite</translation>
    </message>
    <message>
        <source>cures %1 faster than its sheet</source>
        <translation>durcit %1 plus vite que sa fiche</translation>
    </message>
    <message>
        <source>cures %1 slower than its sheet</source>
        <translation>durcit %1 moins vite que sa fiche</translation>
    </message>
</context>
<context>
    <name>MeasureScreen</name>
    <message>
        <source>Humidity</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Key in the humidity of the air</source>
        <translation>Saisir l’humidité de l’air</translation>
    </message>
    <message>
        <source>Bevel</source>
        <translation>Chanfrein</translation>
    </message>
    <message>
        <source>Key in the bevel, run to depth</source>
        <translation>Saisir le chanfrein, longueur/profondeur</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Key in the length</source>
        <translation>Saisir la longueur</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Key in the width</source>
        <translation>Saisir la largeur</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Key in the depth</source>
        <translation>Saisir la profondeur</translation>
    </message>
    <message>
        <source>Panel thickness</source>
        <translation>Épaisseur du panneau</translation>
    </message>
    <message>
        <source>Key in the panel’s thickness</source>
        <translation>Saisir l’épaisseur du panneau</translation>
    </message>
    <message>
        <source>Deeper than the panel is thick: that is a hole.</source>
        <translation>Plus profond que l’épaisseur&#xa0;: c’est un trou.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Air</translation>
    </message>
    <message>
        <source>Key in the air’s temperature</source>
        <translation>Saisir la température de l’air</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panneau</translation>
    </message>
    <message>
        <source>Key in the panel’s temperature</source>
        <translation>Saisir la température du panneau</translation>
    </message>
    <message>
        <source>Dew point: not yet known</source>
        <translation>Point de rosée&#xa0;: non connu</translation>
    </message>
    <message>
        <source>Dew point %1, panel %2 above it</source>
        <translation>Point de rosée %1, panneau %2 au-dessus</translation>
    </message>
    <message>
        <source>Measured: go on</source>
        <translation>Mesuré&#xa0;: continuer</translation>
    </message>
    <message>
        <source>Read: go on</source>
        <translation>Mesuré : continuer</translation>
    </message>
    <message>
        <source>Read air and panel again</source>
        <translation>Remesurer air et panneau</translation>
    </message>
    <message>
        <source>Read air, and the panel beside the filler</source>
        <translation>Mesurer l’air, et le panneau près du mastic</translation>
    </message>
    <message>
        <source>Air and humidity</source>
        <translation>Air et humidité</translation>
    </message>
</context>
<context>
    <name>MessageScreen</name>
    <message>
        <source>hold 1 s</source>
        <translation>tenir 1&#xa0;s</translation>
    </message>
</context>
<context>
    <name>Names</name>
    <message>
        <source>laminate</source>
        <extracomment>FRP: glass-fibre laminate</extracomment>
        <translation>stratifié</translation>
    </message>
    <message>
        <source>SMC</source>
        <extracomment>sheet moulding compound; the trade&apos;s abbreviation</extracomment>
        <translation>SMC</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acier</translation>
    </message>
    <message>
        <source>galvanised steel</source>
        <translation>acier galvanisé</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminium</translation>
    </message>
    <message>
        <source>thermoplastic</source>
        <translation>thermoplastique</translation>
    </message>
    <message>
        <source>flexible polyurethane</source>
        <translation>polyuréthane souple</translation>
    </message>
    <message>
        <source>carbon fibre</source>
        <translation>fibre de carbone</translation>
    </message>
    <message>
        <source>cast plastic without fibre</source>
        <translation>plastique coulé sans fibre</translation>
    </message>
    <message>
        <source>magnesium</source>
        <translation>magnésium</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>gouge</source>
        <translation>entaille</translation>
    </message>
    <message>
        <source>dent</source>
        <translation>creux</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>fissure</translation>
    </message>
    <message>
        <source>through hole</source>
        <translation>trou</translation>
    </message>
    <message>
        <source>rust hole</source>
        <translation>trou de rouille</translation>
    </message>
    <message>
        <source>weld seam</source>
        <translation>joint soudé</translation>
    </message>
    <message>
        <source>bond seam</source>
        <translation>joint collé</translation>
    </message>
    <message>
        <source>solid weld</source>
        <translation>cordon continu</translation>
    </message>
    <message>
        <source>spot welds</source>
        <translation>points soudés</translation>
    </message>
    <message>
        <source>stitch welds</source>
        <translation>cordons courts</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>nu</translation>
    </message>
    <message>
        <source>abraded epoxy primer</source>
        <translation>primaire époxy poncé</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>peinture</translation>
    </message>
    <message>
        <source>old filler</source>
        <translation>vieux mastic</translation>
    </message>
    <message>
        <source>sealer or underseal</source>
        <translation>étanchéité, antigravillon</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>rouille</translation>
    </message>
    <message>
        <source>rust converter</source>
        <translation>convertisseur de rouille</translation>
    </message>
    <message>
        <source>acid-etch primer</source>
        <translation>primaire réactif</translation>
    </message>
    <message>
        <source>uncured primer</source>
        <translation>primaire non durci</translation>
    </message>
    <message>
        <source>solder with flux</source>
        <translation>étain avec flux</translation>
    </message>
    <message>
        <source>looks only</source>
        <translation>aspect seul</translation>
    </message>
    <message>
        <source>carries load</source>
        <translation>porteuse</translation>
    </message>
    <message>
        <source>belts, seats, airbags</source>
        <translation>ceintures, sièges, airbags</translation>
    </message>
    <message>
        <source>in front of a sensor</source>
        <translation>devant un capteur</translation>
    </message>
    <message>
        <source>holds fuel or pressure</source>
        <translation>carburant ou pression</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>humide</translation>
    </message>
    <message>
        <source>no core</source>
        <extracomment>nothing between the skins of a laminate</extracomment>
        <translation>sans âme</translation>
    </message>
    <message>
        <source>foam</source>
        <translation>mousse</translation>
    </message>
    <message>
        <source>dry wood</source>
        <translation>bois sec</translation>
    </message>
    <message>
        <source>wet wood</source>
        <translation>bois mouillé</translation>
    </message>
    <message>
        <source>short strand, dense</source>
        <translation>fibre courte, dense</translation>
    </message>
    <message>
        <source>short strand, light</source>
        <translation>fibre courte, légère</translation>
    </message>
    <message>
        <source>mixed strand</source>
        <translation>fibre mixte</translation>
    </message>
    <message>
        <source>long strand</source>
        <translation>fibre longue</translation>
    </message>
    <message>
        <source>finishing, smooth</source>
        <translation>finition, lisse</translation>
    </message>
    <message>
        <source>finishing, fine</source>
        <translation>finition, fine</translation>
    </message>
    <message>
        <source>front face</source>
        <translation>face avant</translation>
    </message>
    <message>
        <source>back face</source>
        <translation>face arrière</translation>
    </message>
    <message>
        <source>knead</source>
        <extracomment>the phase of a running mix, on the ribbon: keep it short</extracomment>
        <translation>malaxer</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>étaler</translation>
    </message>
    <message>
        <source>clear edges</source>
        <translation>dégager bords</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>attendre</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>poncer</translation>
    </message>
    <message>
        <source>sands hard</source>
        <extracomment>it still sands, but harder than before</extracomment>
        <translation>ponçage dur</translation>
    </message>
    <message>
        <source>assess</source>
        <extracomment>what is next in a repair, on its job card: keep it short</extracomment>
        <translation>évaluer</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>décider</translation>
    </message>
    <message>
        <source>prepare</source>
        <translation>préparer</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélanger</translation>
    </message>
    <message>
        <source>turn the panel</source>
        <translation>retourner</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>finition</translation>
    </message>
    <message>
        <source>hand over</source>
        <translation>remettre</translation>
    </message>
    <message>
        <source>handed over</source>
        <translation>remis</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>what the panel is made of</source>
        <translation>la matière du panneau</translation>
    </message>
    <message>
        <source>kind of damage</source>
        <translation>type de dommage</translation>
    </message>
    <message>
        <source>kind of weld</source>
        <translation>type de soudure</translation>
    </message>
    <message>
        <source>whether the adhesive has cured</source>
        <translation>durcissement de la colle</translation>
    </message>
    <message>
        <source>size of the damage</source>
        <translation>taille du dommage</translation>
    </message>
    <message>
        <source>reach from behind</source>
        <translation>accès par derrière</translation>
    </message>
    <message>
        <source>what is on the surface</source>
        <translation>ce qui est sur la surface</translation>
    </message>
    <message>
        <source>what the zone is for</source>
        <translation>l’usage de la zone</translation>
    </message>
    <message>
        <source>dry or damp</source>
        <translation>sec ou humide</translation>
    </message>
    <message>
        <source>core of the laminate</source>
        <translation>âme du stratifié</translation>
    </message>
    <message>
        <source>air, panel and humidity</source>
        <translation>air, panneau et humidité</translation>
    </message>
    <message>
        <source>returned</source>
        <extracomment>by the supervisor, to be done again</extracomment>
        <translation>renvoyé</translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>As found</source>
        <translation>À l’arrivée</translation>
    </message>
    <message>
        <source>Bare</source>
        <translation>À nu</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Mastiqué</translation>
    </message>
    <message>
        <source>Guide coat</source>
        <translation>Témoin</translation>
    </message>
    <message>
        <source>as found</source>
        <extracomment>in a list of photos: &quot;as found, bare, filled&quot;</extracomment>
        <translation>à l’arrivée</translation>
    </message>
    <message>
        <source>bare</source>
        <translation>à nu</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>mastiqué</translation>
    </message>
    <message>
        <source>guide coat</source>
        <translation>témoin</translation>
    </message>
    <message>
        <source>Deeper than it looked</source>
        <translation>Plus profond qu’il semblait</translation>
    </message>
    <message>
        <source>Crack ran further</source>
        <translation>Fissure plus longue</translation>
    </message>
    <message>
        <source>Old repair found below</source>
        <translation>Ancienne réparation dessous</translation>
    </message>
    <message>
        <source>Panel warmed first</source>
        <translation>Panneau chauffé d’abord</translation>
    </message>
    <message>
        <source>Filler from a new tub</source>
        <translation>Mastic d’un pot neuf</translation>
    </message>
    <message>
        <source>Hardener from a new tube</source>
        <translation>Durcisseur d’un tube neuf</translation>
    </message>
    <message>
        <source>A mix was thrown away</source>
        <translation>Un mélange a été jeté</translation>
    </message>
    <message>
        <source>Edge lifted: cut back</source>
        <translation>Bord décollé&#xa0;: recoupé</translation>
    </message>
    <message>
        <source>Pinholes opened and filled</source>
        <translation>Piqûres ouvertes et mastiquées</translation>
    </message>
    <message>
        <source>Second technician helped</source>
        <translation>Aide d’un second technicien</translation>
    </message>
    <message>
        <source>Supervisor had a look</source>
        <translation>Vu par le chef d’atelier</translation>
    </message>
    <message>
        <source>Waits for a part</source>
        <translation>Attend une pièce</translation>
    </message>
    <message>
        <source>waits for a part</source>
        <translation>attend une pièce</translation>
    </message>
    <message>
        <source>waits for an answer</source>
        <translation>attend une réponse</translation>
    </message>
    <message>
        <source>too cold or too damp</source>
        <translation>trop froid ou humide</translation>
    </message>
    <message>
        <source>metal-work comes first</source>
        <translation>tôlerie d’abord</translation>
    </message>
    <message>
        <source>other work comes first</source>
        <translation>autre travail d’abord</translation>
    </message>
    <message>
        <source>the shift is over</source>
        <translation>fin du service</translation>
    </message>
    <message>
        <source>stays at this bench</source>
        <translation>reste à ce poste</translation>
    </message>
    <message>
        <source>to %1</source>
        <extracomment>%1 is a person: goes on after &quot;Parked:&quot;</extracomment>
        <translation>chez %1</translation>
    </message>
</context>
<context>
    <name>NotesScreen</name>
    <message>
        <source>What is to be noted?</source>
        <translation>Que faut-il noter&#xa0;?</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>À l’étape en cours</translation>
    </message>
    <message>
        <source>More notes</source>
        <translation>Autres notes</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>Texte libre</translation>
    </message>
    <message>
        <source>No notes yet.</source>
        <translation>Pas encore de note.</translation>
    </message>
    <message>
        <source>Older notes</source>
        <translation>Plus anciennes</translation>
    </message>
    <message>
        <source>Newest notes</source>
        <translation>Plus récentes</translation>
    </message>
    <message>
        <source>%1–%2 of %3</source>
        <extracomment>notes %1 to %2 of %3</extracomment>
        <translation>%1–%2 sur %3</translation>
    </message>
    <message>
        <source>Write the note</source>
        <translation>Écrire la note</translation>
    </message>
    <message>
        <source>Keep this note</source>
        <translation>Garder cette note</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>Le code a un caractère de contrôle.</translation>
    </message>
    <message>
        <source>It is not written down.</source>
        <translation>Ce n’est pas noté.</translation>
    </message>
    <message>
        <source>The note is empty.</source>
        <translation>La note est vide.</translation>
    </message>
    <message>
        <source>Write 1 to %1 characters.</source>
        <translation>Écrire 1 à %1 caractères.</translation>
    </message>
    <message>
        <source>Nothing written yet</source>
        <translation>Rien d’écrit encore</translation>
    </message>
</context>
<context>
    <name>Outlooks</name>
    <message numerus="yes">
        <source>%n lift(s).</source>
        <translation>
            <numerusform>%n passe.</numerusform>
            <numerusform>%n passes.</numerusform>
        </translation>
    </message>
    <message>
        <source>Gels in %1, sands from %2.</source>
        <translation>Prise en %1, ponçage dès %2.</translation>
    </message>
    <message>
        <source>Its cure cannot be worked out.</source>
        <translation>Son durcissement ne se calcule pas.</translation>
    </message>
    <message>
        <source>Board sets in %1. Gels on the panel in %2, sands from %3. Hottest %4.</source>
        <translation>Palette prise en %1. Panneau pris en %2, ponçage dès %3. Maximum %4.</translation>
    </message>
    <message>
        <source>Gels in %1, before %2. Sands from %3, before %4.</source>
        <translation>Prise en %1 (avant : %2). Ponçage dès %3 (avant : %4).</translation>
    </message>
</context>
<context>
    <name>PaperScreen</name>
    <message>
        <source>Documents</source>
        <translation>Documents</translation>
    </message>
    <message>
        <source>USB stick</source>
        <translation>Clé USB</translation>
    </message>
</context>
<context>
    <name>PhotosScreen</name>
    <message>
        <source>cannot be shown</source>
        <translation>non affichable</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>Tap what the photo shows</source>
        <translation>Toucher ce que montre la photo</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>À l’étape en cours</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>Use this folder</source>
        <translation>Prendre ce répertoire</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>One up</source>
        <translation>Monter</translation>
    </message>
    <message>
        <source>camera or card</source>
        <translation>appareil ou carte</translation>
    </message>
</context>
<context>
    <name>Phrases</name>
    <message>
        <source>%1–%2 is fine</source>
        <translation>%1–%2 convient</translation>
    </message>
    <message>
        <source>batch %1 of %2</source>
        <translation>mélange %1 sur %2</translation>
    </message>
    <message>
        <source>step %1 of %2</source>
        <translation>étape %1 sur %2</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message numerus="yes">
        <source>%n more mix(es) running</source>
        <translation>
            <numerusform>%n autre mélange en cours</numerusform>
            <numerusform>%n autres mélanges en cours</numerusform>
        </translation>
    </message>
    <message>
        <source>air not read yet</source>
        <translation>air non mesuré</translation>
    </message>
    <message>
        <source>air %1, %2</source>
        <translation>air %1, %2</translation>
    </message>
    <message>
        <source>panel %1</source>
        <translation>panneau %1</translation>
    </message>
    <message>
        <source>%1 over dew point</source>
        <translation>marge de rosée %1</translation>
    </message>
    <message>
        <source>%1 ago · %2</source>
        <translation>il y a %1 · %2</translation>
    </message>
    <message numerus="yes">
        <source>from %n batch(es) of this lot</source>
        <translation>
            <numerusform>d’après %n mélange de ce lot</numerusform>
            <numerusform>d’après %n mélanges de ce lot</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>from %n other lot(s) of this product</source>
        <translation>
            <numerusform>d’après %n autre lot de ce produit</numerusform>
            <numerusform>d’après %n autres lots de ce produit</numerusform>
        </translation>
    </message>
    <message>
        <source>from the sheet</source>
        <translation>selon la fiche</translation>
    </message>
</context>
<context>
    <name>PictureLabels</name>
    <message>
        <source>%1 over the bevel, %2 : 1</source>
        <translation>%1 sur le chanfrein, %2&#xa0;: 1</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>finish %1 (limit %2)</source>
        <translation>finition %1 (limite %2)</translation>
    </message>
    <message>
        <source>%1 panel; depth drawn to the scale of the width</source>
        <translation>panneau %1&#xa0;; profondeur à l’échelle de la largeur</translation>
    </message>
    <message>
        <source>%1 panel; depth drawn %2 times as large as width</source>
        <translation>panneau %1&#xa0;; profondeur grossie %2 fois la largeur</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Taille réelle</translation>
    </message>
    <message>
        <source>not true size</source>
        <translation>taille non réelle</translation>
    </message>
</context>
<context>
    <name>PlanWords</name>
    <message>
        <source>Fibre filler</source>
        <translation>Mastic fibre</translation>
    </message>
    <message>
        <source>Faces to fill</source>
        <translation>Faces à mastiquer</translation>
    </message>
    <message>
        <source>Lifts still to lay</source>
        <translation>Passes encore à poser</translation>
    </message>
    <message>
        <source>Batches still to mix</source>
        <translation>Mélanges encore à faire</translation>
    </message>
    <message>
        <source>Fibre filler still to mix</source>
        <translation>Mastic fibre encore à mélanger</translation>
    </message>
    <message>
        <source>Hardener for it</source>
        <translation>Son durcisseur</translation>
    </message>
    <message>
        <source>Finishing filler, thickness</source>
        <translation>Mastic de finition, épaisseur</translation>
    </message>
    <message>
        <source>Steps of preparing to do</source>
        <translation>Préparations à faire</translation>
    </message>
    <message>
        <source>gear on</source>
        <extracomment>a step of preparing in two or three words, in a list</extracomment>
        <translation>s’équiper</translation>
    </message>
    <message>
        <source>own tools</source>
        <translation>outils à part</translation>
    </message>
    <message>
        <source>wash</source>
        <translation>laver</translation>
    </message>
    <message>
        <source>degrease</source>
        <translation>dégraisser</translation>
    </message>
    <message>
        <source>flash off</source>
        <translation>évaporer</translation>
    </message>
    <message>
        <source>strip paint</source>
        <translation>décaper</translation>
    </message>
    <message>
        <source>cut to sound</source>
        <translation>couper au sain</translation>
    </message>
    <message>
        <source>find cracks</source>
        <translation>voir fissures</translation>
    </message>
    <message>
        <source>stop-drill</source>
        <translation>percer pointes</translation>
    </message>
    <message>
        <source>squeeze-out off</source>
        <translation>ôter bavures</translation>
    </message>
    <message>
        <source>dress the weld</source>
        <translation>meuler soudure</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sécher</translation>
    </message>
    <message>
        <source>bevel</source>
        <translation>chanfreiner</translation>
    </message>
    <message>
        <source>bevel both faces</source>
        <translation>chanfrein deux faces</translation>
    </message>
    <message>
        <source>open the gouge</source>
        <translation>ouvrir l’entaille</translation>
    </message>
    <message>
        <source>bevel the upper panel</source>
        <translation>chanfrein du dessus</translation>
    </message>
    <message>
        <source>abrade the back</source>
        <translation>poncer le dos</translation>
    </message>
    <message>
        <source>bond a backing</source>
        <translation>coller un renfort</translation>
    </message>
    <message>
        <source>dam</source>
        <translation>barrage</translation>
    </message>
    <message>
        <source>80 grit</source>
        <translation>grain 80</translation>
    </message>
    <message>
        <source>dust off</source>
        <translation>dépoussiérer</translation>
    </message>
    <message>
        <source>wipe</source>
        <translation>essuyer</translation>
    </message>
    <message>
        <source>read the panel</source>
        <translation>mesurer</translation>
    </message>
</context>
<context>
    <name>Practice</name>
    <message>
        <source>Rinse the open fibre with water</source>
        <translation>Rincer la fibre ouverte à l’eau</translation>
    </message>
    <message>
        <source>Wipe the ground fibre with solvent</source>
        <translation>Essuyer la fibre poncée au solvant</translation>
    </message>
    <message>
        <source>Blow it off at full line pressure</source>
        <translation>Souffler à pleine pression du réseau</translation>
    </message>
    <message>
        <source>Put the lamp on the wet filler</source>
        <translation>Mettre la lampe sur le mastic frais</translation>
    </message>
    <message>
        <source>Grind it with the disc used on steel</source>
        <translation>Meuler au disque qui a servi sur l’acier</translation>
    </message>
    <message>
        <source>Fill over the paint where it holds</source>
        <translation>Mastiquer sur la peinture qui tient</translation>
    </message>
    <message>
        <source>A weld seam cannot be on this material.</source>
        <translation>Joint soudé impossible sur cette matière.</translation>
    </message>
    <message>
        <source>A rust hole cannot be in this material.</source>
        <translation>Trou de rouille impossible dans cette matière.</translation>
    </message>
    <message>
        <source>The adhesive has not cured.</source>
        <translation>La colle n’a pas durci.</translation>
    </message>
    <message>
        <source>It is a crack in metal.</source>
        <translation>C’est une fissure du métal.</translation>
    </message>
    <message>
        <source>The dent is too deep for filler.</source>
        <translation>Creux trop profond pour le mastic.</translation>
    </message>
    <message>
        <source>The hole is too large for filler.</source>
        <translation>Le trou est trop grand pour le mastic.</translation>
    </message>
    <message>
        <source>It is damp.</source>
        <translation>Il est humide.</translation>
    </message>
    <message>
        <source>No filler fits here.</source>
        <translation>Aucun mastic ne convient.</translation>
    </message>
    <message>
        <source>The panel is too near its dew point.</source>
        <translation>Le panneau est trop près du point de rosée.</translation>
    </message>
    <message>
        <source>The panel is too cold.</source>
        <translation>Le panneau est trop froid.</translation>
    </message>
    <message>
        <source>The panel is too hot.</source>
        <translation>Le panneau est trop chaud.</translation>
    </message>
    <message>
        <source>The air is too cold.</source>
        <translation>L’air est trop froid.</translation>
    </message>
    <message>
        <source>The air is too hot.</source>
        <translation>L’air est trop chaud.</translation>
    </message>
    <message>
        <source>It would gel before it is spread.</source>
        <translation>Il prendrait avant l’étalement.</translation>
    </message>
    <message>
        <source>Even a thin lift would overheat.</source>
        <translation>Même une passe fine surchaufferait.</translation>
    </message>
    <message>
        <source>It would not sand.</source>
        <translation>Il ne se poncerait pas.</translation>
    </message>
    <message>
        <source>Something was not answered.</source>
        <translation>Une réponse manque.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>mastiquer</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>arrêter</translation>
    </message>
    <message>
        <source>front face alone</source>
        <translation>face avant seule</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>les deux faces</translation>
    </message>
    <message>
        <source>zinc gauge</source>
        <translation>jauge de zinc</translation>
    </message>
    <message>
        <source>ohmmeter</source>
        <translation>ohmmètre</translation>
    </message>
    <message>
        <source>broken edge</source>
        <translation>bord cassé</translation>
    </message>
    <message>
        <source>back</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>tap sound</source>
        <translation>son au tapotement</translation>
    </message>
    <message>
        <source>80 grit</source>
        <translation>grain 80</translation>
    </message>
    <message>
        <source>bending</source>
        <translation>flexion</translation>
    </message>
    <message>
        <source>vinegar</source>
        <translation>vinaigre</translation>
    </message>
    <message>
        <source>magnet</source>
        <translation>aimant</translation>
    </message>
    <message>
        <source>Guide coat gone</source>
        <translation>Témoin parti</translation>
    </message>
    <message>
        <source>Straightedge, both ways</source>
        <translation>Règle, en croix</translation>
    </message>
    <message>
        <source>Pinholes in raking light</source>
        <translation>Piqûres en lumière rasante</translation>
    </message>
    <message>
        <source>Nail and paper test</source>
        <translation>Essai ongle et papier</translation>
    </message>
    <message>
        <source>Even tap sound</source>
        <translation>Son uniforme</translation>
    </message>
    <message>
        <source>No edge to be felt</source>
        <translation>Aucun bord senti</translation>
    </message>
    <message>
        <source>identify</source>
        <translation>identifier</translation>
    </message>
    <message>
        <source>decide</source>
        <translation>décider</translation>
    </message>
    <message>
        <source>prepare</source>
        <translation>préparer</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélanger</translation>
    </message>
    <message>
        <source>time</source>
        <translation>temps</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>finition</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matière</translation>
    </message>
    <message>
        <source>Kind of damage</source>
        <translation>Type de dommage</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Kind of weld</source>
        <translation>Type de soudure</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Colle</translation>
    </message>
    <message>
        <source>Reach from behind</source>
        <translation>Accès par derrière</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Dry or damp</source>
        <translation>Sec ou humide</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Âme</translation>
    </message>
    <message>
        <source>Fill or stop</source>
        <translation>Mastic ou arrêt</translation>
    </message>
    <message>
        <source>Why stop</source>
        <translation>Motif d’arrêt</translation>
    </message>
    <message>
        <source>What instead</source>
        <translation>Que faire alors</translation>
    </message>
    <message>
        <source>Which filler</source>
        <translation>Quel mastic</translation>
    </message>
    <message>
        <source>Steps left out</source>
        <translation>Étapes omises</translation>
    </message>
    <message>
        <source>Steps too many</source>
        <translation>Étapes de trop</translation>
    </message>
    <message>
        <source>Order of steps</source>
        <translation>Ordre des étapes</translation>
    </message>
    <message>
        <source>Thickness in one go</source>
        <translation>Épaisseur d’un coup</translation>
    </message>
    <message>
        <source>Built up</source>
        <translation>Remplissage</translation>
    </message>
    <message>
        <source>Amount mixed</source>
        <translation>Masse mélangée</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>Edges cleared</source>
        <translation>Bords dégagés</translation>
    </message>
    <message>
        <source>When sanded</source>
        <translation>Quand poncé</translation>
    </message>
    <message>
        <source>Other face</source>
        <translation>Autre face</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Mastic de finition</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Contrôle</translation>
    </message>
    <message>
        <source>Wait before primer</source>
        <translation>Attente avant apprêt</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>two times</extracomment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1, lift %2</source>
        <extracomment>%1 is a decision, %2 a number: &quot;Hardener, lift 2&quot;</extracomment>
        <translation>%1, passe %2</translation>
    </message>
    <message>
        <source>Not passed: it was filled where it must stop.</source>
        <translation>Non réussi&#xa0;: mastiqué là où il faut arrêter.</translation>
    </message>
    <message>
        <source>Not passed: it could have been filled.</source>
        <translation>Non réussi&#xa0;: on pouvait mastiquer.</translation>
    </message>
    <message>
        <source>Not passed: the wrong filler went in.</source>
        <translation>Non réussi&#xa0;: mauvais mastic posé.</translation>
    </message>
    <message>
        <source>Not passed: one mistake that no care makes good.</source>
        <translation>Non réussi&#xa0;: une erreur qu’aucun soin ne rattrape.</translation>
    </message>
    <message>
        <source>Passed.</source>
        <translation>Réussi.</translation>
    </message>
    <message>
        <source>Not passed: more than one mistake in: %1.</source>
        <extracomment>%1 is a list of skills: &quot;mix, time&quot;</extracomment>
        <translation>Non réussi&#xa0;: plus d’une erreur dans&#xa0;: %1.</translation>
    </message>
</context>
<context>
    <name>PracticeAsk</name>
    <message>
        <source>Look at the panel</source>
        <translation>Voir le panneau</translation>
    </message>
    <message>
        <source>More answers</source>
        <translation>Autres réponses</translation>
    </message>
    <message>
        <source>Fill it, or stop?</source>
        <translation>Mastiquer ou arrêter&#xa0;?</translation>
    </message>
    <message>
        <source>Fill it</source>
        <translation>Mastiquer</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Arrêter ici</translation>
    </message>
    <message>
        <source>What speaks against filling? All of it</source>
        <translation>Qu’est-ce qui interdit le mastic&#xa0;? Tout indiquer</translation>
    </message>
    <message>
        <source>That is all</source>
        <translation>C’est tout</translation>
    </message>
    <message>
        <source>What is done instead?</source>
        <translation>Que faire à la place&#xa0;?</translation>
    </message>
    <message>
        <source>Which filler is put on first?</source>
        <translation>Quel mastic d’abord&#xa0;?</translation>
    </message>
    <message>
        <source>Tap what is done, in its order</source>
        <translation>Toucher ce qui se fait, dans l’ordre</translation>
    </message>
    <message>
        <source>Prepared</source>
        <translation>Préparé</translation>
    </message>
    <message>
        <source>How thick is the next lift?</source>
        <translation>Épaisseur de la prochaine passe&#xa0;?</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Passe</translation>
    </message>
    <message>
        <source>Key in its thickness</source>
        <translation>Saisir l’épaisseur</translation>
    </message>
    <message>
        <source>Mix for it</source>
        <translation>Mélanger</translation>
    </message>
    <message>
        <source>Another lift on this face</source>
        <translation>Autre passe sur cette face</translation>
    </message>
    <message>
        <source>Turn the panel, fill the back</source>
        <translation>Retourner, mastiquer le dos</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Mastic de finition</translation>
    </message>
    <message>
        <source>It is sanded. What comes next?</source>
        <translation>Poncé. Que faire ensuite&#xa0;?</translation>
    </message>
    <message>
        <source>Finishing filler: how many coats, how thick?</source>
        <translation>Finition&#xa0;: combien de couches, quelle épaisseur&#xa0;?</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Couches</translation>
    </message>
    <message>
        <source>Key in how many</source>
        <translation>Saisir combien</translation>
    </message>
    <message>
        <source>Each coat</source>
        <translation>Chaque couche</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fini</translation>
    </message>
    <message>
        <source>What do you look for before primer?</source>
        <translation>Que contrôler avant l’apprêt&#xa0;?</translation>
    </message>
    <message>
        <source>How long after the last sanding comes primer?</source>
        <translation>Apprêt combien de temps après le dernier ponçage&#xa0;?</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Attente</translation>
    </message>
    <message>
        <source>Key in the minutes</source>
        <translation>Saisir les minutes</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Practice panel</source>
        <translation>Panneau d’exercice</translation>
    </message>
</context>
<context>
    <name>PracticeHome</name>
    <message>
        <source>Practice: nobody is at the bench</source>
        <translation>Exercice&#xa0;: personne au poste</translation>
    </message>
    <message>
        <source>Practice: %1</source>
        <translation>Exercice&#xa0;: %1</translation>
    </message>
    <message>
        <source>Practise: nothing here is in the shop’s record</source>
        <translation>S’exercer&#xa0;: rien ici ne va au journal de l’atelier</translation>
    </message>
    <message>
        <source>exercises: %1</source>
        <extracomment>%1 is a skill: &quot;mix&quot;</extracomment>
        <translation>exerce&#xa0;: %1</translation>
    </message>
    <message>
        <source>Go on with the panel</source>
        <translation>Reprendre le panneau</translation>
    </message>
    <message>
        <source>Next panel</source>
        <translation>Panneau suivant</translation>
    </message>
    <message>
        <source>A panel made up</source>
        <translation>Un panneau inventé</translation>
    </message>
    <message>
        <source>never the same again</source>
        <translation>jamais deux fois le même</translation>
    </message>
    <message>
        <source>Skills</source>
        <translation>Compétences</translation>
    </message>
    <message>
        <source>what is mastered</source>
        <translation>ce qui est maîtrisé</translation>
    </message>
    <message>
        <source>Tour</source>
        <translation>Visite</translation>
    </message>
    <message>
        <source>three minutes</source>
        <translation>trois minutes</translation>
    </message>
    <message>
        <source>not tried yet</source>
        <translation>pas encore essayé</translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <translation>%1 sur %2 justes</translation>
    </message>
    <message>
        <source>%1, mastered</source>
        <extracomment>%1 is &quot;8 of 10 right&quot;</extracomment>
        <translation>%1, maîtrisé</translation>
    </message>
    <message>
        <source>%1, not mastered yet</source>
        <translation>%1, pas encore maîtrisé</translation>
    </message>
</context>
<context>
    <name>PracticeRules</name>
    <message>
        <source>Every test on the panel must fit the material named.</source>
        <translation>Chaque essai du panneau doit aller avec la matière nommée.</translation>
    </message>
    <message>
        <source>One test speaks against it: %1.</source>
        <extracomment>%1 is a test: &quot;tap sound&quot;</extracomment>
        <translation>Un essai le dément&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No test tells %1 materials apart here: that is unknown.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Ici aucun essai ne distingue %1 matières&#xa0;: c’est inconnu.</translation>
    </message>
    <message>
        <source>The kind of damage sets how it is cut and filled.</source>
        <translation>Le type de dommage dicte la coupe et le masticage.</translation>
    </message>
    <message>
        <source>A length within %1 or %2, a width or depth within %3 or %4. A crack counts from tip to tip.</source>
        <extracomment>%1 and %3 are percentages, %2 and %4 lengths</extracomment>
        <translation>Longueur à %1 ou %2 près, largeur ou profondeur à %3 ou %4 près. Une fissure compte de pointe à pointe.</translation>
    </message>
    <message>
        <source>Only a solid weld is filled; look at both sides.</source>
        <translation>On ne mastique qu’un cordon continu&#xa0;; voir les deux côtés.</translation>
    </message>
    <message>
        <source>A nail tells whether the adhesive has cured.</source>
        <translation>L’ongle dit si la colle a durci.</translation>
    </message>
    <message>
        <source>Reached from behind means by hand, not by a mirror.</source>
        <translation>Accès par derrière&#xa0;: à la main, pas au miroir.</translation>
    </message>
    <message>
        <source>What is on the surface is told by cloth and nail.</source>
        <translation>Chiffon et ongle disent ce qu’il y a en surface.</translation>
    </message>
    <message>
        <source>What carries load, restrains or sees reaches %1 round it.</source>
        <extracomment>%1 is a length</extracomment>
        <translation>Ce qui porte, retient ou voit compte jusqu’à %1 autour.</translation>
    </message>
    <message>
        <source>A taped foil tells dry from damp.</source>
        <translation>Un film scotché distingue sec et humide.</translation>
    </message>
    <message>
        <source>An open edge shows what lies between the skins.</source>
        <translation>Un bord ouvert montre ce qu’il y a entre les peaux.</translation>
    </message>
    <message>
        <source>The decision table says it for the answers given.</source>
        <translation>Le tableau de décision le dit, vu les réponses données.</translation>
    </message>
    <message>
        <source>By the answers given, this stops it: %1.</source>
        <translation>D’après les réponses, ceci l’arrête&#xa0;: %1.</translation>
    </message>
    <message>
        <source>By the answers given, nothing stops it.</source>
        <translation>D’après les réponses, rien ne l’arrête.</translation>
    </message>
    <message>
        <source>Whoever stops says what must be put right, all of it.</source>
        <translation>Qui arrête dit ce qu’il faut corriger, en entier.</translation>
    </message>
    <message>
        <source>Each stop has its own way out.</source>
        <translation>Chaque arrêt a sa propre issue.</translation>
    </message>
    <message>
        <source>Best for this damage on this material: %1.</source>
        <extracomment>%1 is a filler</extracomment>
        <translation>Le mieux pour ce dommage sur cette matière&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It may be used, but another is better: %1.</source>
        <translation>Il peut servir, mais un autre vaut mieux&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The table refuses it here: %1.</source>
        <translation>Le tableau le refuse ici&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No step of the plan is left out.</source>
        <translation>Aucune étape du plan n’est omise.</translation>
    </message>
    <message>
        <source>Nothing is done that does not belong here.</source>
        <translation>Rien n’est fait qui n’ait sa place ici.</translation>
    </message>
    <message>
        <source>Each step comes before the one that would spoil it.</source>
        <translation>Chaque étape vient avant celle qui la gâcherait.</translation>
    </message>
    <message>
        <source>At most %1 in one go, and no hotter than %2.</source>
        <extracomment>%1 is a thickness, %2 a temperature</extracomment>
        <translation>Au plus %1 d’un coup, et pas plus chaud que %2.</translation>
    </message>
    <message>
        <source>The face is full to within %1.</source>
        <extracomment>%1 is a thickness</extracomment>
        <translation>La face est pleine à %1 près.</translation>
    </message>
    <message>
        <source>At most %1 too little or %2 too much.</source>
        <extracomment>%1 and %2 are percentages</extracomment>
        <translation>Au plus %1 de moins ou %2 de trop.</translation>
    </message>
    <message>
        <source>%1 hardener of filler mass, from %2 to %3.</source>
        <extracomment>three shares</extracomment>
        <translation>%1 de durcisseur sur la masse de mastic, de %2 à %3.</translation>
    </message>
    <message>
        <source>Edges are cleared from %1 of the gel time to the gel.</source>
        <extracomment>%1 is a share</extracomment>
        <translation>Les bords se dégagent de %1 du temps de prise à la prise.</translation>
    </message>
    <message>
        <source>Sanding waits for %1 cured at the face, and is easy for a while.</source>
        <extracomment>%1 is a share</extracomment>
        <translation>On ponce à %1 durci en surface&#xa0;; c’est facile un moment.</translation>
    </message>
    <message>
        <source>A hole through a laminate is filled from both faces.</source>
        <translation>Un trou traversant du stratifié se mastique des deux faces.</translation>
    </message>
    <message>
        <source>A coat at most %1, in all at most %2, full to within %3.</source>
        <extracomment>two thicknesses, and a tolerance</extracomment>
        <translation>Couche au plus %1, en tout au plus %2, pleine à %3 près.</translation>
    </message>
    <message>
        <source>All tests are made before primer.</source>
        <translation>Tous les essais se font avant l’apprêt.</translation>
    </message>
    <message>
        <source>Primer waits at least %1 after the last sanding.</source>
        <extracomment>%1 is a time</extracomment>
        <translation>L’apprêt attend au moins %1 après le dernier ponçage.</translation>
    </message>
</context>
<context>
    <name>ProductFiles</name>
    <message>
        <source>This file is no sheet that can be used</source>
        <translation>Ce fichier n’est pas une fiche utilisable</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Autre fichier</translation>
    </message>
    <message>
        <source>Which product sheet is to be read?</source>
        <translation>Quelle fiche produit lire&#xa0;?</translation>
    </message>
    <message>
        <source>There is no JSON and no CSV file in this folder.</source>
        <translation>Aucun fichier JSON ni CSV dans ce répertoire.</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Autre répertoire</translation>
    </message>
</context>
<context>
    <name>ProductSheets</name>
    <message>
        <source>Short name in files</source>
        <translation>Nom court des fichiers</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Demo sheet</source>
        <translation>Fiche de démo</translation>
    </message>
    <message>
        <source>Kind of filler</source>
        <translation>Type de mastic</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Masse volumique</translation>
    </message>
    <message>
        <source>Working time</source>
        <translation>Temps de travail</translation>
    </message>
    <message>
        <source>Working time, at least</source>
        <translation>Travail, au moins</translation>
    </message>
    <message>
        <source>Working time, at most</source>
        <translation>Travail, au plus</translation>
    </message>
    <message>
        <source>Sands after</source>
        <translation>Se ponce après</translation>
    </message>
    <message>
        <source>Sands after, at least</source>
        <translation>Ponçage, au moins</translation>
    </message>
    <message>
        <source>Sands after, at most</source>
        <translation>Ponçage, au plus</translation>
    </message>
    <message>
        <source>Sands easily for</source>
        <translation>Se ponce bien pendant</translation>
    </message>
    <message>
        <source>Layer that was sanded</source>
        <translation>Couche poncée</translation>
    </message>
    <message>
        <source>Times stated at</source>
        <translation>Temps donnés à</translation>
    </message>
    <message>
        <source>Heat of cure</source>
        <translation>Chaleur de prise</translation>
    </message>
    <message>
        <source>Specific heat</source>
        <translation>Chaleur massique</translation>
    </message>
    <message>
        <source>Conductivity</source>
        <translation>Conductivité</translation>
    </message>
    <message>
        <source>Greatest lift</source>
        <translation>Passe maximale</translation>
    </message>
    <message>
        <source>Greatest in all coats</source>
        <translation>Maximum en tout</translation>
    </message>
    <message>
        <source>Shrinkage</source>
        <translation>Retrait</translation>
    </message>
    <message>
        <source>Styrene</source>
        <translation>Styrène</translation>
    </message>
    <message>
        <source>Hardener share</source>
        <translation>Part de durcisseur</translation>
    </message>
    <message>
        <source>Hardener, lowest</source>
        <translation>Durcisseur, minimum</translation>
    </message>
    <message>
        <source>Hardener, highest</source>
        <translation>Durcisseur, maximum</translation>
    </message>
    <message>
        <source>With a caution from</source>
        <translation>Attention dès</translation>
    </message>
    <message>
        <source>With a caution up to</source>
        <translation>Attention jusqu’à</translation>
    </message>
    <message>
        <source>Peroxide in hardener</source>
        <translation>Peroxyde du durcisseur</translation>
    </message>
    <message>
        <source>Hardener in a bead</source>
        <translation>Durcisseur du cordon</translation>
    </message>
    <message>
        <source>Panel, coldest</source>
        <translation>Panneau, minimum</translation>
    </message>
    <message>
        <source>Panel, hottest</source>
        <translation>Panneau, maximum</translation>
    </message>
    <message>
        <source>Panel, with a caution</source>
        <translation>Panneau, attention</translation>
    </message>
    <message>
        <source>Peak in the filler</source>
        <translation>Maximum du mastic</translation>
    </message>
    <message>
        <source>Store from</source>
        <translation>Stocker dès</translation>
    </message>
    <message>
        <source>Store up to</source>
        <translation>Stocker jusqu’à</translation>
    </message>
    <message>
        <source>Months sealed</source>
        <translation>Mois, fermé</translation>
    </message>
    <message>
        <source>Months opened</source>
        <translation>Mois, ouvert</translation>
    </message>
    <message>
        <source>Names zinc</source>
        <translation>Cite le zinc</translation>
    </message>
    <message>
        <source>Activation energy</source>
        <translation>Énergie d’activation</translation>
    </message>
    <message>
        <source>Exponent m</source>
        <translation>Exposant m</translation>
    </message>
    <message>
        <source>Exponent n</source>
        <translation>Exposant n</translation>
    </message>
    <message>
        <source>Hardener exponent</source>
        <translation>Exposant du durcisseur</translation>
    </message>
    <message>
        <source>Cures to at most</source>
        <translation>Durcit au plus à</translation>
    </message>
    <message>
        <source>And for each kelvin</source>
        <translation>Et par kelvin</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>Limits and store</source>
        <translation>Limites et stockage</translation>
    </message>
    <message>
        <source>Heat and make-up</source>
        <translation>Chaleur, composition</translation>
    </message>
    <message>
        <source>Law of cure</source>
        <translation>Loi de prise</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>demo sheet</source>
        <translation>fiche de démo</translation>
    </message>
</context>
<context>
    <name>Questions</name>
    <message>
        <source>What is this panel made of?</source>
        <translation>De quoi est fait ce panneau&#xa0;?</translation>
    </message>
    <message>
        <source>What is wrong with it?</source>
        <translation>Quel est le dommage&#xa0;?</translation>
    </message>
    <message>
        <source>How is this seam welded?</source>
        <translation>Comment ce joint est-il soudé&#xa0;?</translation>
    </message>
    <message>
        <source>Has the adhesive in this seam cured?</source>
        <translation>La colle de ce joint a-t-elle durci&#xa0;?</translation>
    </message>
    <message>
        <source>How large is the damage?</source>
        <translation>Quelle taille a le dommage&#xa0;?</translation>
    </message>
    <message>
        <source>Can you reach it from behind?</source>
        <translation>Y a-t-il accès par derrière&#xa0;?</translation>
    </message>
    <message>
        <source>What is on the surface now?</source>
        <translation>Qu’y a-t-il sur la surface&#xa0;?</translation>
    </message>
    <message>
        <source>What is this part of the vehicle for?</source>
        <translation>À quoi sert cette partie du véhicule&#xa0;?</translation>
    </message>
    <message>
        <source>Is it dry right through?</source>
        <translation>Est-ce sec à cœur&#xa0;?</translation>
    </message>
    <message>
        <source>What is inside the laminate?</source>
        <translation>Qu’y a-t-il dans le stratifié&#xa0;?</translation>
    </message>
    <message>
        <source>Read the air, the panel and the humidity</source>
        <translation>Mesurer l’air, le panneau et l’humidité</translation>
    </message>
    <message>
        <source>glass cloth or mat at the broken edge</source>
        <extracomment>how to tell the answer: one line on its button</extracomment>
        <translation>tissu ou mat de verre au bord cassé</translation>
    </message>
    <message>
        <source>short loose strands, smooth on both faces</source>
        <translation>brins courts libres, lisse sur les deux faces</translation>
    </message>
    <message>
        <source>a magnet holds, the zinc gauge reads nothing</source>
        <translation>l’aimant tient, la jauge de zinc ne lit rien</translation>
    </message>
    <message>
        <source>a magnet holds, the zinc gauge reads zinc</source>
        <translation>l’aimant tient, la jauge de zinc lit du zinc</translation>
    </message>
    <message>
        <source>no magnet holds, bright and soft under a file</source>
        <translation>l’aimant ne tient pas, brillant et tendre à la lime</translation>
    </message>
    <message>
        <source>marked on the back, such as &gt;PP&lt; or &gt;ABS&lt;</source>
        <translation>marqué au dos, par exemple &gt;PP&lt; ou &gt;ABS&lt;</translation>
    </message>
    <message>
        <source>bends in the hand, marked &gt;PUR&lt;</source>
        <translation>plie à la main, marqué &gt;PUR&lt;</translation>
    </message>
    <message>
        <source>black strands, the ohmmeter shows a path</source>
        <translation>brins noirs, l’ohmmètre montre un passage</translation>
    </message>
    <message>
        <source>breaks like china, no fibre at the edge</source>
        <translation>casse comme la porcelaine, bord sans fibre</translation>
    </message>
    <message>
        <source>no magnet holds, very light, marked Mg</source>
        <translation>l’aimant ne tient pas, très léger, marqué Mg</translation>
    </message>
    <message>
        <source>none of these is certain</source>
        <translation>aucun n’est certain</translation>
    </message>
    <message>
        <source>a groove that does not go through</source>
        <translation>une rainure non traversante</translation>
    </message>
    <message>
        <source>pushed in, not torn</source>
        <translation>enfoncé, pas déchiré</translation>
    </message>
    <message>
        <source>split, nothing missing</source>
        <translation>fendu, rien ne manque</translation>
    </message>
    <message>
        <source>goes right through, material is missing</source>
        <translation>traversant, il manque de la matière</translation>
    </message>
    <message>
        <source>rust has eaten through</source>
        <translation>la rouille a percé</translation>
    </message>
    <message>
        <source>sheets joined by welding</source>
        <translation>tôles jointes par soudage</translation>
    </message>
    <message>
        <source>panels joined by adhesive</source>
        <translation>panneaux joints par collage</translation>
    </message>
    <message>
        <source>one weld without a gap from end to end</source>
        <translation>une soudure sans vide d’un bout à l’autre</translation>
    </message>
    <message>
        <source>round spots, the sheets loose between them</source>
        <translation>points ronds, tôles libres entre eux</translation>
    </message>
    <message>
        <source>short welds with gaps between them</source>
        <translation>soudures courtes avec des vides entre elles</translation>
    </message>
    <message>
        <source>the panel itself, nothing on it</source>
        <translation>le panneau seul, rien dessus</translation>
    </message>
    <message>
        <source>cured right through and sanded dull</source>
        <translation>durci à cœur et poncé mat</translation>
    </message>
    <message>
        <source>any paint where filler is to go</source>
        <translation>toute peinture là où va le mastic</translation>
    </message>
    <message>
        <source>filler that nobody knows</source>
        <translation>mastic que personne ne connaît</translation>
    </message>
    <message>
        <source>soft, takes a nail mark</source>
        <translation>mou, l’ongle marque</translation>
    </message>
    <message>
        <source>brown or black, in the pits too</source>
        <translation>brune ou noire, dans les piqûres aussi</translation>
    </message>
    <message>
        <source>black or blue film over old rust</source>
        <translation>film noir ou bleu sur vieille rouille</translation>
    </message>
    <message>
        <source>thin, acid, often yellow or grey-green</source>
        <translation>mince, acide, souvent jaune ou gris-vert</translation>
    </message>
    <message>
        <source>smells, or smears under a solvent cloth</source>
        <translation>sent, ou bave sous un chiffon à solvant</translation>
    </message>
    <message>
        <source>soft grey metal, brown residue</source>
        <translation>métal gris tendre, résidu brun</translation>
    </message>
    <message>
        <source>skin, skirt, fairing: nothing depends on it</source>
        <translation>habillage, bas de caisse, carénage : rien n’en dépend</translation>
    </message>
    <message>
        <source>pillar, rail, or within 30 cm of brake, steering, suspension</source>
        <translation>montant, longeron, ou à moins de 30&#xa0;cm de frein, direction, suspension</translation>
    </message>
    <message>
        <source>belt or seat mounting, glass flange, airbag, high voltage</source>
        <translation>ancrage de ceinture ou siège, feuillure de vitre, airbag, haute tension</translation>
    </message>
    <message>
        <source>radar, camera or ultrasound looks through it</source>
        <translation>radar, caméra ou ultrason vise au travers</translation>
    </message>
    <message>
        <source>tank, line or air vessel</source>
        <translation>réservoir, conduite, bouteille d’air</translation>
    </message>
    <message>
        <source>no mist under taped film, front and back</source>
        <translation>pas de buée sous film collé, devant et derrière</translation>
    </message>
    <message>
        <source>wet, dark, or mist under taped film</source>
        <translation>mouillé, sombre, ou buée sous film collé</translation>
    </message>
    <message>
        <source>solid laminate, nothing between two skins</source>
        <translation>stratifié plein, rien entre deux peaux</translation>
    </message>
    <message>
        <source>two skins with foam between them</source>
        <translation>deux peaux, mousse entre elles</translation>
    </message>
    <message>
        <source>two skins with sound, dry wood</source>
        <translation>deux peaux, bois sain et sec</translation>
    </message>
    <message>
        <source>wood that is dark, soft or wet</source>
        <translation>bois sombre, mou ou mouillé</translation>
    </message>
    <message>
        <source>Cured</source>
        <translation>Durcie</translation>
    </message>
    <message>
        <source>Yes, both faces</source>
        <translation>Oui, les deux faces</translation>
    </message>
    <message>
        <source>Not cured</source>
        <translation>Non durcie</translation>
    </message>
    <message>
        <source>No, one face only</source>
        <translation>Non, une seule face</translation>
    </message>
    <message>
        <source>its sheet’s time is over, a nail leaves no mark</source>
        <translation>le temps de sa fiche est passé, l’ongle ne marque pas</translation>
    </message>
    <message>
        <source>hand and tool get there</source>
        <translation>main et outil y passent</translation>
    </message>
    <message>
        <source>soft, or nobody knows when it was laid</source>
        <translation>molle, ou date de pose inconnue</translation>
    </message>
    <message>
        <source>closed behind, or too tight to work</source>
        <translation>fermé derrière, ou trop étroit</translation>
    </message>
</context>
<context>
    <name>QuickCard</name>
    <message>
        <source>Quick card</source>
        <translation>Carte mémo</translation>
    </message>
    <message>
        <source>Limits as they were set on %1; the glass shows those of now.</source>
        <extracomment>%1 is a day</extracomment>
        <translation>Limites réglées le %1&#xa0;; l’écran montre celles de maintenant.</translation>
    </message>
    <message>
        <source>The safety data sheets, the vehicle maker’s repair manual, local codes and licensed practice come before this card.</source>
        <translation>Les fiches de sécurité, le manuel du constructeur, les règles locales et les habilitations passent avant cette carte.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of several: &quot;1 of 3&quot;</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>The job in steps</source>
        <translation>Le travail en étapes</translation>
    </message>
    <message>
        <source>Limits of this bench; a product’s own apply where they are narrower</source>
        <translation>Limites de ce poste&#xa0;; celles du produit valent si plus étroites</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Réglée à</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a range: &quot;1 % to 3 %&quot;</extracomment>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Products in use, by their sheets</source>
        <translation>Produits employés, selon leurs fiches</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Hardener, of the filler’s mass</source>
        <translation>Durcisseur, de la masse de mastic</translation>
    </message>
    <message>
        <source>Greatest lift</source>
        <translation>Passe maximale</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panneau</translation>
    </message>
    <message numerus="yes">
        <source>%n more product(s) under bench set-up.</source>
        <translation>
            <numerusform>%n autre produit aux réglages du poste.</numerusform>
            <numerusform>%n autres produits aux réglages du poste.</numerusform>
        </translation>
    </message>
    <message>
        <source>Signs</source>
        <translation>Signes</translation>
    </message>
    <message>
        <source>Stop: do not go on here.</source>
        <translation>Stop : ne pas continuer ici.</translation>
    </message>
    <message>
        <source>Caution: it can hurt, or spoil the work.</source>
        <translation>Attention&#xa0;: cela peut blesser ou gâter le travail.</translation>
    </message>
    <message>
        <source>Done: it was told and is in the log.</source>
        <translation>Fait&#xa0;: c’est dit et dans le journal.</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source>Its resin wets the glass of a laminate.</source>
        <translation>Sa résine mouille le verre du stratifié.</translation>
    </message>
    <message>
        <source>It holds on SMC that is abraded and free of dust.</source>
        <translation>Il tient sur SMC poncé et sans poussière.</translation>
    </message>
    <message>
        <source>It holds on bare, abraded steel.</source>
        <translation>Il tient sur acier nu poncé.</translation>
    </message>
    <message>
        <source>It holds on aluminium filled within the hour.</source>
        <translation>Il tient sur aluminium mastiqué dans l’heure.</translation>
    </message>
    <message>
        <source>On zinc only if its sheet names zinc, or over abraded epoxy primer.</source>
        <translation>Sur zinc seulement si sa fiche le nomme, ou sur époxy poncé.</translation>
    </message>
    <message>
        <source>Dense filler has the fewest pores over a ground weld.</source>
        <translation>Un mastic dense a le moins de pores sur soudure meulée.</translation>
    </message>
    <message>
        <source>Dense filler shows the bond line least when it swells.</source>
        <translation>Dense, il marque le moins la ligne de colle qui gonfle.</translation>
    </message>
    <message>
        <source>Its short strands hold only in a small hole.</source>
        <translation>Ses fibres courtes ne tiennent qu’en petit trou.</translation>
    </message>
    <message>
        <source>Light filler holds poorly on SMC.</source>
        <translation>Un mastic léger tient mal sur SMC.</translation>
    </message>
    <message>
        <source>Light filler has pores that let water to the zinc.</source>
        <translation>Les pores d’un mastic léger amènent l’eau au zinc.</translation>
    </message>
    <message>
        <source>Light filler has pores that let water to the aluminium.</source>
        <translation>Les pores d’un mastic léger amènent l’eau à l’aluminium.</translation>
    </message>
    <message>
        <source>Light filler only over a weld without pores.</source>
        <translation>Mastic léger seulement sur soudure sans pore.</translation>
    </message>
    <message>
        <source>It takes a bond seam whose adhesive has cured.</source>
        <translation>Il convient au joint collé dont la colle a durci.</translation>
    </message>
    <message>
        <source>Light filler cannot bridge a hole.</source>
        <translation>Un mastic léger ne ponte pas un trou.</translation>
    </message>
    <message>
        <source>Mixed strand bonds best to SMC.</source>
        <translation>La fibre mixte adhère le mieux au SMC.</translation>
    </message>
    <message>
        <source>It takes a solid weld that is ground level.</source>
        <translation>Il convient au cordon continu meulé à fleur.</translation>
    </message>
    <message>
        <source>Mixed strand bridges a hole and wets its edges.</source>
        <translation>La fibre mixte ponte un trou et mouille ses bords.</translation>
    </message>
    <message>
        <source>Long strand builds bulk.</source>
        <translation>La fibre longue donne du volume.</translation>
    </message>
    <message>
        <source>Long strand has too little resin to wet SMC.</source>
        <translation>La fibre longue a trop peu de résine pour mouiller le SMC.</translation>
    </message>
    <message>
        <source>Long strand is coarse and lets water to the zinc.</source>
        <translation>La fibre longue est grossière, l’eau atteint le zinc.</translation>
    </message>
    <message>
        <source>Long strand is coarse and lets water to the aluminium.</source>
        <translation>La fibre longue est grossière, l’eau atteint l’aluminium.</translation>
    </message>
    <message>
        <source>Long strand leaves voids over a weld.</source>
        <translation>La fibre longue laisse des vides sur soudure.</translation>
    </message>
    <message>
        <source>Long strand leaves voids over a bond line.</source>
        <translation>La fibre longue laisse des vides sur collage.</translation>
    </message>
    <message>
        <source>Long strand only bridges; mixed strand must go over it.</source>
        <translation>La fibre longue ne fait que ponter&#xa0;; fibre mixte par-dessus.</translation>
    </message>
    <message>
        <source>The table does not say that it may be used here.</source>
        <translation>Le tableau ne l’autorise pas ici.</translation>
    </message>
    <message>
        <source>No product sheet of this class is loaded.</source>
        <translation>Aucune fiche de cette classe n’est enregistrée.</translation>
    </message>
    <message>
        <source>%1 suits better here.</source>
        <extracomment>%1 is a filler class: &quot;mixed strand&quot;</extracomment>
        <translation>%1&#xa0;: convient mieux ici.</translation>
    </message>
    <message>
        <source>The dent is %1 deep: metal-work aims at %2 or less.</source>
        <translation>Le creux fait %1&#xa0;: la tôlerie vise %2 ou moins.</translation>
    </message>
    <message>
        <source>The panel is at %1, below %2: it cures slower and grips less.</source>
        <translation>Panneau à %1, sous %2 : prise plus lente, accroche moindre.</translation>
    </message>
    <message>
        <source>The hole is %1 across: bond a backing first, lapping %2.</source>
        <translation>Trou de %1&#xa0;: coller d’abord un renfort, recouvrant de %2.</translation>
    </message>
    <message>
        <source>No bevel is given: filler cracks out of square edges.</source>
        <translation>Chanfrein non indiqué&#xa0;: le mastic se fend aux bords vifs.</translation>
    </message>
    <message>
        <source>%1 is too little to measure by a bead: weigh it to 0.01 g, or mix %2 and book the waste.</source>
        <translation>%1 est trop peu pour un cordon&#xa0;: peser à 0,01&#xa0;g, ou mélanger %2 et noter la perte.</translation>
    </message>
    <message>
        <source>The puddle is only %1 across, below %2: weigh instead.</source>
        <translation>Galette de %1 seulement, sous %2&#xa0;: plutôt peser.</translation>
    </message>
    <message>
        <source>The puddle is %1 across, above %2: split the batch.</source>
        <translation>Galette de %1, au-dessus de %2&#xa0;: diviser le mélange.</translation>
    </message>
    <message>
        <source>The puddle is %1 across, the board %2: split the batch.</source>
        <translation>Galette de %1, palette de %2&#xa0;: diviser le mélange.</translation>
    </message>
    <message>
        <source>Demo sheet: its values are invented, not for work.</source>
        <translation>Fiche de démo&#xa0;: valeurs inventées, pas pour le travail.</translation>
    </message>
    <message>
        <source>%1 in one go reaches %2, limit %3: %4 lifts.</source>
        <extracomment>%1 is a thickness, %2 and %3 temperatures, %4 a number above one</extracomment>
        <translation>%1 d’un coup monte à %2, limite %3 : %4 passes.</translation>
    </message>
    <message>
        <source>At most %1 in one go today: more would pass %2.</source>
        <translation>Aujourd’hui au plus %1 d’un coup : plus dépasserait %2.</translation>
    </message>
    <message>
        <source>Nobody reaches behind it: %1 bridges the backing, %2 goes over it.</source>
        <extracomment>%1 is the hole&apos;s size, %2 how far the backing laps its edge</extracomment>
        <translation>Sans accès par derrière&#xa0;: %1 ponte le renfort, %2 par-dessus.</translation>
    </message>
    <message>
        <source>The hardener lot in hand cures %1 faster than its sheet: planned for that.</source>
        <extracomment>%1 is a share: &quot;8 %&quot;</extracomment>
        <translation>Le lot de durcisseur en main durcit %1 plus vite que sa fiche&#xa0;: plan fait pour cela.</translation>
    </message>
    <message>
        <source>The hardener lot in hand cures %1 slower than its sheet: planned for that.</source>
        <translation>Le lot de durcisseur en main durcit %1 moins vite que sa fiche&#xa0;: plan fait pour cela.</translation>
    </message>
    <message>
        <source>Overridden by the supervisor: %1.</source>
        <extracomment>%1 is a stop: &quot;Damp&quot;</extracomment>
        <translation>Dérogation du chef d’atelier : %1.</translation>
    </message>
</context>
<context>
    <name>RecallList</name>
    <message>
        <source>Recall list · %1 · lot %2</source>
        <extracomment>%1 is a product, %2 a lot</extracomment>
        <translation>Liste de rappel · %1 · lot %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a list: &quot;1 of 3&quot;</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n mélange</numerusform>
            <numerusform>%n mélanges</numerusform>
        </translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panneau</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Every batch that this bench’s log names with this lot; batches whose lot was not told are not among them.</source>
        <translation>Chaque mélange que le journal de ce poste nomme avec ce lot&#xa0;; les mélanges sans lot indiqué n’y sont pas.</translation>
    </message>
</context>
<context>
    <name>RecordScreen</name>
    <message>
        <source>Deviation</source>
        <translation>Écart</translation>
    </message>
</context>
<context>
    <name>Review</name>
    <message>
        <source>at work</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>to sign off or return</source>
        <translation>à viser ou renvoyer</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>visé</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>renvoyé</translation>
    </message>
    <message>
        <source>What the panel is made of was not found out.</source>
        <translation>On n’a pas établi de quoi est fait le panneau.</translation>
    </message>
    <message>
        <source>No photo: %1.</source>
        <extracomment>%1 is a moment: &quot;as found&quot;</extracomment>
        <translation>Pas de photo&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Lot of the filler not told.</source>
        <translation>Lot du mastic non indiqué.</translation>
    </message>
    <message>
        <source>Lot of the hardener not told.</source>
        <translation>Lot du durcisseur non indiqué.</translation>
    </message>
    <message>
        <source>No reading of air and panel before the first hardener.</source>
        <translation>Pas de mesure d’air et de panneau avant le premier durcisseur.</translation>
    </message>
    <message>
        <source>Air and humidity were keyed in, not read by an instrument.</source>
        <translation>Air et humidité saisis à la main, sans instrument.</translation>
    </message>
    <message>
        <source>Filler and hardener were not weighed.</source>
        <translation>Mastic et durcisseur n’ont pas été pesés.</translation>
    </message>
    <message>
        <source>Not told when the edges were clear.</source>
        <translation>Non indiqué quand les bords étaient nets.</translation>
    </message>
    <message>
        <source>Nail and paper test not told.</source>
        <translation>Essai de l’ongle et du papier non indiqué.</translation>
    </message>
    <message>
        <source>Tests of the hand-over not passed: %1.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Essais de remise non réussis : %1.</translation>
    </message>
    <message>
        <source>Acts without a name: %1.</source>
        <extracomment>%1 is a number</extracomment>
        <translation>Actions sans nom : %1.</translation>
    </message>
    <message>
        <source>Not told who allowed: %1.</source>
        <extracomment>%1 is a stop: &quot;Damp&quot;</extracomment>
        <translation>Non indiqué qui a permis&#xa0;: %1.</translation>
    </message>
    <message>
        <source>assessing</source>
        <translation>évaluation</translation>
    </message>
    <message>
        <source>preparing</source>
        <translation>préparation</translation>
    </message>
    <message>
        <source>laying</source>
        <translation>pose</translation>
    </message>
    <message>
        <source>curing</source>
        <translation>durcissement</translation>
    </message>
    <message>
        <source>sanding</source>
        <translation>ponçage</translation>
    </message>
    <message>
        <source>turning</source>
        <translation>retournement</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>finition</translation>
    </message>
    <message>
        <source>parked</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>All repairs</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Poste</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Substrate</source>
        <translation>Support</translation>
    </message>
    <message>
        <source>This bench</source>
        <translation>Ce poste</translation>
    </message>
    <message>
        <source>Bench %1</source>
        <translation>Poste %1</translation>
    </message>
    <message>
        <source>Not told by what the substrate was found out.</source>
        <translation>Ce qui a fait reconnaître le support n’est pas dit.</translation>
    </message>
</context>
<context>
    <name>ReviewChoices</name>
    <message>
        <source>Which repairs of the day?</source>
        <translation>Quelles réparations du jour&#xa0;?</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n réparation</numerusform>
            <numerusform>%n réparations</numerusform>
        </translation>
    </message>
    <message>
        <source>No repair of that day has one.</source>
        <translation>Aucune réparation de ce jour n’en a.</translation>
    </message>
    <message>
        <source>Why is it returned?</source>
        <translation>Pourquoi est-ce renvoyé&#xa0;?</translation>
    </message>
    <message>
        <source>More reasons</source>
        <translation>Autres raisons</translation>
    </message>
</context>
<context>
    <name>Roles</name>
    <message>
        <source>edges due soon</source>
        <translation>bords bientôt</translation>
    </message>
    <message>
        <source>it gels</source>
        <translation>il prend</translation>
    </message>
    <message>
        <source>it sands</source>
        <translation>il se ponce</translation>
    </message>
    <message>
        <source>sanding time over</source>
        <translation>fin du temps de ponçage</translation>
    </message>
    <message>
        <source>Hands off: it gels</source>
        <translation>Ne plus toucher : il prend</translation>
    </message>
    <message>
        <source>Sand: it is ready</source>
        <translation>Poncer : c’est prêt</translation>
    </message>
    <message>
        <source>Sand now: it hardens</source>
        <translation>Poncer vite : il durcit</translation>
    </message>
    <message>
        <source>sign-off</source>
        <translation>visa</translation>
    </message>
    <message>
        <source>override of a stop</source>
        <translation>dérogation à un arrêt</translation>
    </message>
    <message>
        <source>change of a product sheet</source>
        <translation>changement d’une fiche</translation>
    </message>
    <message>
        <source>restoring a backup</source>
        <translation>restauration de sauvegarde</translation>
    </message>
    <message>
        <source>forgetting a lot</source>
        <translation>oubli d’un lot</translation>
    </message>
    <message>
        <source>correction of a record</source>
        <translation>correction d’historique</translation>
    </message>
    <message>
        <source>change of the PIN</source>
        <translation>changement du code</translation>
    </message>
    <message>
        <source>without a PIN</source>
        <translation>sans code</translation>
    </message>
    <message>
        <source>wrong PIN</source>
        <translation>code faux</translation>
    </message>
    <message>
        <source>within the wait after wrong PINs</source>
        <translation>pendant l’attente après des codes faux</translation>
    </message>
    <message>
        <source>no PIN is set</source>
        <translation>aucun code n’est fixé</translation>
    </message>
    <message>
        <source>the try could not be counted</source>
        <translation>l’essai n’a pas pu être compté</translation>
    </message>
    <message>
        <source>Proved by another test</source>
        <translation>Prouvé par un autre essai</translation>
    </message>
    <message>
        <source>The vehicle maker’s manual allows it</source>
        <translation>Le manuel du constructeur le permet</translation>
    </message>
    <message>
        <source>A trial piece, not for a vehicle</source>
        <translation>Pièce d’essai, pas pour un véhicule</translation>
    </message>
    <message>
        <source>Clear the edges: %1</source>
        <extracomment>%1 is a time left: &quot;0:20&quot;</extracomment>
        <translation>Dégager les bords : %1</translation>
    </message>
    <message>
        <source>Clear the edges now</source>
        <translation>Dégager les bords maintenant</translation>
    </message>
    <message numerus="yes">
        <source>+%n more</source>
        <translation>
            <numerusform>+%n autre</numerusform>
            <numerusform>+%n autres</numerusform>
        </translation>
    </message>
    <message>
        <source>Clock set on by %1. Mixes run on.</source>
        <translation>Horloge avancée de %1. Les mélanges continuent.</translation>
    </message>
    <message>
        <source>Clock set back by %1. Mixes run on.</source>
        <translation>Horloge reculée de %1. Les mélanges continuent.</translation>
    </message>
    <message>
        <source>The machine slept %1. Mixes ran on.</source>
        <translation>La machine a dormi %1. Les mélanges ont continué.</translation>
    </message>
    <message>
        <source>Local time goes on by %1. Mixes run on.</source>
        <translation>L’heure locale avance de %1. Les mélanges continuent.</translation>
    </message>
    <message>
        <source>Local time goes back by %1. Mixes run on.</source>
        <translation>L’heure locale recule de %1. Les mélanges continuent.</translation>
    </message>
    <message>
        <source>The machine restarted after %1. Mixes ran on.</source>
        <translation>Machine redémarrée après %1. Les mélanges ont continué.</translation>
    </message>
    <message>
        <source>The clock stands %1 behind the log: set it.</source>
        <translation>L’horloge retarde de %1 sur le journal : la régler.</translation>
    </message>
    <message>
        <source>Refused: %1, %2</source>
        <extracomment>%1 is an act, %2 why: &quot;sign-off&quot;, &quot;wrong PIN&quot;</extracomment>
        <translation>Refusé : %1, %2</translation>
    </message>
    <message>
        <source>Supervisor’s PIN set at the machine</source>
        <translation>Code du chef d’atelier fixé sur la machine</translation>
    </message>
    <message>
        <source>Supervisor’s PIN set</source>
        <translation>Code du chef d’atelier fixé</translation>
    </message>
    <message>
        <source>Log restored from a backup, whole: %1 entries</source>
        <translation>Journal restauré d’une sauvegarde, entier&#xa0;: %1 entrées</translation>
    </message>
    <message>
        <source>Log restored from a backup, as far as it could be read: %1 entries</source>
        <translation>Journal restauré d’une sauvegarde, partie lisible : %1 entrées</translation>
    </message>
    <message>
        <source>Log of bench %1 brought in: %2 entries</source>
        <extracomment>%1 is a bench&apos;s name, %2 a number</extracomment>
        <translation>Journal du poste %1 importé : %2 entrées</translation>
    </message>
    <message>
        <source>Bead of hardener %1 calibrated: %2, scatter %3</source>
        <extracomment>%1 is a lot, %2 a mass per length, %3 a percentage</extracomment>
        <translation>Cordon du durcisseur %1 étalonné&#xa0;: %2, dispersion %3</translation>
    </message>
    <message>
        <source>Product sheet kept: %1</source>
        <extracomment>%1 is the sheet&apos;s id</extracomment>
        <translation>Fiche produit gardée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Product sheet laid aside: %1</source>
        <translation>Fiche produit écartée&#xa0;: %1</translation>
    </message>
    <message>
        <source>return</source>
        <translation>renvoi</translation>
    </message>
    <message>
        <source>The contour is not true</source>
        <translation>Le galbe n’est pas juste</translation>
    </message>
    <message>
        <source>Pinholes</source>
        <translation>Piqûres</translation>
    </message>
    <message>
        <source>An edge shows or maps</source>
        <translation>Un bord se voit ou se marque</translation>
    </message>
    <message>
        <source>Filler is soft</source>
        <translation>Le mastic est mou</translation>
    </message>
    <message>
        <source>Sounds hollow: it does not hold</source>
        <translation>Sonne creux&#xa0;: ça ne tient pas</translation>
    </message>
    <message>
        <source>Strayed too far from plan or sheet</source>
        <translation>Trop loin du plan ou de la fiche</translation>
    </message>
    <message>
        <source>The record lacks what it must hold</source>
        <translation>Il manque à l’historique ce qu’il doit contenir</translation>
    </message>
    <message>
        <source>Something else: in words</source>
        <translation>Autre chose&#xa0;: en toutes lettres</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>bench.ini: not allowed and left out: %1</source>
        <translation>bench.ini : non permis, omis : %1</translation>
    </message>
</context>
<context>
    <name>SideKey</name>
    <message>
        <source>Photo: %1</source>
        <extracomment>%1 is when: &quot;as found&quot;, &quot;bare&quot;, &quot;filled&quot;, &quot;guide coat&quot;</extracomment>
        <translation>Photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>prise %1</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aucune</translation>
    </message>
</context>
<context>
    <name>SkillsPaper</name>
    <message>
        <source>filled where it must stop</source>
        <translation>mastiqué malgré l’arrêt</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>réussi</translation>
    </message>
    <message>
        <source>not passed</source>
        <translation>non réussi</translation>
    </message>
    <message>
        <source>Practice · %1</source>
        <extracomment>%1 is a person</extracomment>
        <translation>Exercice · %1</translation>
    </message>
    <message>
        <source>Practice panels alone; nothing of this is in the shop’s record. It says what was practised, not what somebody may do.</source>
        <translation>Panneaux d’exercice seuls&#xa0;; rien n’en figure au journal de l’atelier. Dit ce qui a été exercé, non ce que quelqu’un a le droit de faire.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of several: &quot;1 of 3&quot;</extracomment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Skill</source>
        <translation>Compétence</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Panneaux</translation>
    </message>
    <message>
        <source>Likely known</source>
        <translation>Acquis probable</translation>
    </message>
    <message>
        <source>Mastered: known with a probability of 95 % by knowledge tracing (Corbett and Anderson, 1995).</source>
        <translation>Maîtrisé&#xa0;: su avec une probabilité de 95&#xa0;% selon le «&#xa0;knowledge tracing&#xa0;» (Corbett et Anderson, 1995).</translation>
    </message>
    <message>
        <source>Panels worked</source>
        <translation>Panneaux faits</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Panneau</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Mistakes</source>
        <translation>Erreurs</translation>
    </message>
    <message>
        <source>Choose where the skills go</source>
        <translation>Choisir où vont les compétences</translation>
    </message>
</context>
<context>
    <name>Statements</name>
    <message>
        <source>Extremely flammable aerosol.</source>
        <translation>Aérosol extrêmement inflammable.</translation>
    </message>
    <message>
        <source>Highly flammable liquid and vapour.</source>
        <translation>Liquide et vapeurs très inflammables.</translation>
    </message>
    <message>
        <source>Flammable liquid and vapour.</source>
        <translation>Liquide et vapeurs inflammables.</translation>
    </message>
    <message>
        <source>Flammable solid.</source>
        <translation>Matière solide inflammable.</translation>
    </message>
    <message>
        <source>Pressurised container: may burst if heated.</source>
        <translation>Récipient sous pression&#xa0;: peut éclater sous l’effet de la chaleur.</translation>
    </message>
    <message>
        <source>Heating may cause a fire or explosion.</source>
        <translation>Peut s’enflammer ou exploser sous l’effet de la chaleur.</translation>
    </message>
    <message>
        <source>Heating may cause a fire.</source>
        <translation>Peut s’enflammer sous l’effet de la chaleur.</translation>
    </message>
    <message>
        <source>In contact with water releases flammable gases.</source>
        <translation>Dégage au contact de l’eau des gaz inflammables.</translation>
    </message>
    <message>
        <source>May be corrosive to metals.</source>
        <translation>Peut être corrosif pour les métaux.</translation>
    </message>
    <message>
        <source>Toxic if swallowed.</source>
        <translation>Toxique en cas d’ingestion.</translation>
    </message>
    <message>
        <source>Harmful if swallowed.</source>
        <translation>Nocif en cas d’ingestion.</translation>
    </message>
    <message>
        <source>May be fatal if swallowed and enters airways.</source>
        <translation>Peut être mortel en cas d’ingestion et de pénétration dans les voies respiratoires.</translation>
    </message>
    <message>
        <source>Harmful in contact with skin.</source>
        <translation>Nocif par contact cutané.</translation>
    </message>
    <message>
        <source>Causes severe skin burns and eye damage.</source>
        <translation>Provoque de graves brûlures de la peau et de graves lésions des yeux.</translation>
    </message>
    <message>
        <source>Causes skin irritation.</source>
        <translation>Provoque une irritation cutanée.</translation>
    </message>
    <message>
        <source>May cause an allergic skin reaction.</source>
        <translation>Peut provoquer une allergie cutanée.</translation>
    </message>
    <message>
        <source>Causes serious eye damage.</source>
        <translation>Provoque de graves lésions des yeux.</translation>
    </message>
    <message>
        <source>Causes serious eye irritation.</source>
        <translation>Provoque une sévère irritation des yeux.</translation>
    </message>
    <message>
        <source>Harmful if inhaled.</source>
        <translation>Nocif par inhalation.</translation>
    </message>
    <message>
        <source>May cause allergy or asthma symptoms or breathing difficulties if inhaled.</source>
        <translation>Peut provoquer des symptômes allergiques ou d’asthme ou des difficultés respiratoires par inhalation.</translation>
    </message>
    <message>
        <source>May cause respiratory irritation.</source>
        <translation>Peut irriter les voies respiratoires.</translation>
    </message>
    <message>
        <source>May cause drowsiness or dizziness.</source>
        <translation>Peut provoquer somnolence ou vertiges.</translation>
    </message>
    <message>
        <source>May cause cancer.</source>
        <translation>Peut provoquer le cancer.</translation>
    </message>
    <message>
        <source>Suspected of causing cancer.</source>
        <translation>Susceptible de provoquer le cancer.</translation>
    </message>
    <message>
        <source>May damage fertility or the unborn child.</source>
        <translation>Peut nuire à la fertilité ou au fœtus.</translation>
    </message>
    <message>
        <source>Suspected of damaging fertility or the unborn child.</source>
        <translation>Susceptible de nuire à la fertilité ou au fœtus.</translation>
    </message>
    <message>
        <source>Suspected of damaging the unborn child.</source>
        <translation>Susceptible de nuire au fœtus.</translation>
    </message>
    <message>
        <source>Causes damage to organs through prolonged or repeated exposure.</source>
        <translation>Risque avéré d’effets graves pour les organes à la suite d’expositions répétées ou d’une exposition prolongée.</translation>
    </message>
    <message>
        <source>May cause damage to organs through prolonged or repeated exposure.</source>
        <translation>Risque présumé d’effets graves pour les organes à la suite d’expositions répétées ou d’une exposition prolongée.</translation>
    </message>
    <message>
        <source>Very toxic to aquatic life.</source>
        <translation>Très toxique pour les organismes aquatiques.</translation>
    </message>
    <message>
        <source>Very toxic to aquatic life with long lasting effects.</source>
        <translation>Très toxique pour les organismes aquatiques, entraîne des effets néfastes à long terme.</translation>
    </message>
    <message>
        <source>Toxic to aquatic life with long lasting effects.</source>
        <translation>Toxique pour les organismes aquatiques, entraîne des effets néfastes à long terme.</translation>
    </message>
    <message>
        <source>Harmful to aquatic life with long lasting effects.</source>
        <translation>Nocif pour les organismes aquatiques, entraîne des effets néfastes à long terme.</translation>
    </message>
    <message>
        <source>Repeated exposure may cause skin dryness or cracking.</source>
        <translation>L’exposition répétée peut provoquer dessèchement ou gerçures de la peau.</translation>
    </message>
    <message>
        <source>Obtain special instructions before use.</source>
        <translation>Se procurer les instructions spéciales avant utilisation.</translation>
    </message>
    <message>
        <source>Do not handle until all safety precautions have been read and understood.</source>
        <translation>Ne pas manipuler avant d’avoir lu et compris toutes les précautions de sécurité.</translation>
    </message>
    <message>
        <source>Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.</source>
        <translation>Tenir à l’écart de la chaleur, des surfaces chaudes, des étincelles, des flammes nues et de toute autre source d’inflammation. Ne pas fumer.</translation>
    </message>
    <message>
        <source>Do not allow contact with water.</source>
        <translation>Éviter tout contact avec l’eau.</translation>
    </message>
    <message>
        <source>Keep container tightly closed.</source>
        <translation>Maintenir le récipient fermé de manière étanche.</translation>
    </message>
    <message>
        <source>Keep only in original packaging.</source>
        <translation>Conserver uniquement dans l’emballage d’origine.</translation>
    </message>
    <message>
        <source>Keep cool.</source>
        <translation>Tenir au frais.</translation>
    </message>
    <message>
        <source>Do not breathe dust/fume/gas/mist/vapours/spray.</source>
        <translation>Ne pas respirer les poussières/fumées/gaz/brouillards/vapeurs/aérosols.</translation>
    </message>
    <message>
        <source>Avoid breathing dust/fume/gas/mist/vapours/spray.</source>
        <translation>Éviter de respirer les poussières/fumées/gaz/brouillards/vapeurs/aérosols.</translation>
    </message>
    <message>
        <source>Use only outdoors or in a well-ventilated area.</source>
        <translation>Utiliser seulement en plein air ou dans un endroit bien ventilé.</translation>
    </message>
    <message>
        <source>Avoid release to the environment.</source>
        <translation>Éviter le rejet dans l’environnement.</translation>
    </message>
    <message>
        <source>Wear protective gloves/protective clothing/eye protection/face protection.</source>
        <translation>Porter des gants de protection/des vêtements de protection/un équipement de protection des yeux/du visage.</translation>
    </message>
    <message>
        <source>IF SWALLOWED: Immediately call a POISON CENTER/doctor.</source>
        <translation>EN CAS D’INGESTION&#xa0;: Appeler immédiatement un CENTRE ANTIPOISON/un médecin.</translation>
    </message>
    <message>
        <source>IF ON SKIN: Wash with plenty of water.</source>
        <translation>EN CAS DE CONTACT AVEC LA PEAU&#xa0;: Laver abondamment à l’eau.</translation>
    </message>
    <message>
        <source>IF INHALED: Remove person to fresh air and keep comfortable for breathing.</source>
        <translation>EN CAS D’INHALATION&#xa0;: Transporter la personne à l’extérieur et la maintenir dans une position où elle peut confortablement respirer.</translation>
    </message>
    <message>
        <source>IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.</source>
        <translation>EN CAS DE CONTACT AVEC LES YEUX&#xa0;: Rincer avec précaution à l’eau pendant plusieurs minutes. Enlever les lentilles de contact si la victime en porte et si elles peuvent être facilement enlevées. Continuer à rincer.</translation>
    </message>
    <message>
        <source>IF exposed or concerned: Get medical advice/attention.</source>
        <translation>EN CAS d’exposition prouvée ou suspectée&#xa0;: Consulter un médecin.</translation>
    </message>
    <message>
        <source>Do NOT induce vomiting.</source>
        <translation>NE PAS faire vomir.</translation>
    </message>
    <message>
        <source>If skin irritation or rash occurs: Get medical advice/attention.</source>
        <translation>En cas d’irritation ou d’éruption cutanée&#xa0;: Consulter un médecin.</translation>
    </message>
    <message>
        <source>If eye irritation persists: Get medical advice/attention.</source>
        <translation>Si l’irritation oculaire persiste&#xa0;: Consulter un médecin.</translation>
    </message>
    <message>
        <source>Store in a well-ventilated place. Keep cool.</source>
        <translation>Stocker dans un endroit bien ventilé. Tenir au frais.</translation>
    </message>
    <message>
        <source>Protect from sunlight. Do not expose to temperatures exceeding 50 °C/122 °F.</source>
        <translation>Protéger du rayonnement solaire. Ne pas exposer à une température supérieure à 50 °C/122 °F.</translation>
    </message>
    <message>
        <source>Store separately.</source>
        <translation>Stocker séparément.</translation>
    </message>
    <message>
        <source>Dispose of contents/container in accordance with local regulations.</source>
        <translation>Éliminer le contenu/récipient conformément à la réglementation locale.</translation>
    </message>
</context>
<context>
    <name>StationScreens</name>
    <message>
        <source>Sanding block</source>
        <translation>Cale à poncer</translation>
    </message>
    <message>
        <source>Sand the skim to the contour, 180 grit</source>
        <translation>Poncer la finition au galbe, grain 180</translation>
    </message>
    <message>
        <source>Sand level, 80 grit, extraction on</source>
        <translation>Poncer à fleur, grain 80, aspiration</translation>
    </message>
    <message>
        <source>Feather it out beyond the filler.</source>
        <translation>En dégradé au-delà du mastic.</translation>
    </message>
    <message>
        <source>Coarser paper only inside the filled area. Then dust off.</source>
        <translation>Grain plus gros seulement dans la zone mastiquée. Puis dépoussiérer.</translation>
    </message>
    <message>
        <source>Sanded and dusted off</source>
        <translation>Poncé et dépoussiéré</translation>
    </message>
    <message>
        <source>Turn the panel</source>
        <translation>Retourner le panneau</translation>
    </message>
    <message>
        <source>Strip the dam, then turn the panel over</source>
        <translation>Ôter le barrage, puis retourner le panneau</translation>
    </message>
    <message>
        <source>Residue of the dam off, 80 grit, dust off.</source>
        <translation>Ôter les restes du barrage, grain 80, dépoussiérer.</translation>
    </message>
    <message>
        <source>The other face is filled the same way.</source>
        <translation>L’autre face se mastique de même.</translation>
    </message>
    <message>
        <source>Turned and clean</source>
        <translation>Retourné et propre</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Hand over for primer</source>
        <translation>Remettre pour l’apprêt</translation>
    </message>
    <message>
        <source>All six tests are passed and in the log.</source>
        <translation>Les six essais sont réussis et au journal.</translation>
    </message>
    <message>
        <source>Mixed: %1 of fibre filler, %2 of finishing filler, in %3.</source>
        <translation>Mélangé&#xa0;: %1 de mastic fibre, %2 de finition, en %3.</translation>
    </message>
    <message>
        <source>The paint system’s data sheet says when it may be primed.</source>
        <translation>La fiche du système peinture dit quand apprêter.</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Remis</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>This repair is closed and in the log.</source>
        <translation>Cette réparation est close et au journal.</translation>
    </message>
    <message>
        <source>The supervisor signs it off with the day’s work.</source>
        <translation>Le chef d’atelier y met son visa avec le travail du jour.</translation>
    </message>
    <message>
        <source>To the rail</source>
        <translation>Au bandeau</translation>
    </message>
    <message>
        <source>No photo yet: %1.</source>
        <extracomment>%1 is a list of photos: &quot;as found, bare&quot;</extracomment>
        <translation>Photo à faire : %1.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Turn the panel over</source>
        <translation>Retourner le panneau</translation>
    </message>
    <message>
        <source>80 grit, dust off.</source>
        <translation>Grain 80, dépoussiérer.</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Renvoyé</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Renvoyé par le chef d’atelier</translation>
    </message>
    <message>
        <source>%1, %2. The record of this repair stays as it is; its rework is taken in as a repair of its own, from the first question on.</source>
        <extracomment>%1 is a day, %2 a person</extracomment>
        <translation>%1, %2. L’historique de cette réparation reste tel quel ; sa reprise entre comme une réparation à part, dès la première question.</translation>
    </message>
    <message>
        <source>Begin the rework</source>
        <translation>Commencer la reprise</translation>
    </message>
</context>
<context>
    <name>StationWords</name>
    <message>
        <source>%1 since hardener</source>
        <translation>%1 depuis le durcisseur</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>reste %1</translation>
    </message>
    <message>
        <source>by choice</source>
        <translation>par choix</translation>
    </message>
</context>
<context>
    <name>StepScreen</name>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>À l’étape en cours</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>%1: less</source>
        <translation>%1&#xa0;: moins</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1&#xa0;: plus</translation>
    </message>
    <message>
        <source>not answered yet</source>
        <translation>sans réponse</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, unit: %2</source>
        <translation>%1, unité&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message>
        <source>Put your gear on and start the extraction</source>
        <translation>S’équiper et lancer l’aspiration</translation>
    </message>
    <message>
        <source>Goggles, mask, gloves, ear protection, closed sleeves. Read the safety data sheets of what you use.</source>
        <translation>Lunettes, masque, gants, antibruit, manches fermées. Lire les fiches de sécurité des produits.</translation>
    </message>
    <message>
        <source>Gear is on</source>
        <translation>Équipé</translation>
    </message>
    <message>
        <source>Fetch the tools that touch only aluminium</source>
        <translation>Prendre les outils réservés à l’aluminium</translation>
    </message>
    <message>
        <source>Own discs, own brush, own extractor. Steel grit in aluminium starts corrosion.</source>
        <translation>Disques, brosse, aspirateur à part. La limaille d’acier amorce la corrosion.</translation>
    </message>
    <message>
        <source>Own tools are here</source>
        <translation>Outils réservés prêts</translation>
    </message>
    <message>
        <source>Wash the panel with soap and water</source>
        <translation>Laver le panneau à l’eau savonneuse</translation>
    </message>
    <message>
        <source>Keep water off open fibre. Rinse, wipe, and let it dry.</source>
        <translation>Pas d’eau sur fibre à nu. Rincer, essuyer, laisser sécher.</translation>
    </message>
    <message>
        <source>Washed and rinsed</source>
        <translation>Lavé et rincé</translation>
    </message>
    <message>
        <source>Wipe off wax and grease with solvent</source>
        <translation>Ôter cire et graisse au solvant</translation>
    </message>
    <message>
        <source>Two cloths: one wipes it on, the other takes it off. Before any abrasive.</source>
        <translation>Deux chiffons&#xa0;: un pour appliquer, un pour essuyer. Avant tout ponçage.</translation>
    </message>
    <message>
        <source>Degreased with two cloths</source>
        <translation>Dégraissé à deux chiffons</translation>
    </message>
    <message>
        <source>Degrease with little acetone, away from open fibre</source>
        <translation>Dégraisser, peu d’acétone, loin des fibres à nu</translation>
    </message>
    <message>
        <source>Two cloths, wipe on and off. Slow solvents soak into open fibre and stay.</source>
        <translation>Deux chiffons&#xa0;: appliquer, essuyer. Les solvants lents restent dans la fibre.</translation>
    </message>
    <message>
        <source>Let the solvent flash off</source>
        <translation>Laisser évaporer le solvant</translation>
    </message>
    <message>
        <source>Wait until nothing smells and nothing feels cold.</source>
        <translation>Attendre&#xa0;: plus d’odeur, plus de froid au toucher.</translation>
    </message>
    <message>
        <source>Solvent has flashed off</source>
        <translation>Solvant évaporé</translation>
    </message>
    <message>
        <source>Strip the paint well beyond the repair</source>
        <translation>Décaper largement autour de la réparation</translation>
    </message>
    <message>
        <source>%1 beyond the damage, edges feathered. Fibre filler never goes over paint.</source>
        <translation>%1 au-delà du dommage, bords en dégradé. Jamais de mastic fibre sur peinture.</translation>
    </message>
    <message>
        <source>Paint is off, edges feathered</source>
        <translation>Peinture ôtée, bords en dégradé</translation>
    </message>
    <message>
        <source>Cut away everything loose, back to sound material</source>
        <translation>Couper tout ce qui se détache, jusqu’au sain</translation>
    </message>
    <message>
        <source>What is white or rattles is loose. Tap: it must ring alike all round.</source>
        <translation>Blanc ou sonnant creux&#xa0;: décollé. Tapoter&#xa0;: le son doit être égal.</translation>
    </message>
    <message>
        <source>Cut to sound material</source>
        <translation>Coupé jusqu’au sain</translation>
    </message>
    <message>
        <source>Find every crack that runs out</source>
        <translation>Chercher chaque fissure qui file</translation>
    </message>
    <message>
        <source>Light from the side, and press gently. Mark each tip.</source>
        <translation>Lumière de côté, presser doucement. Marquer chaque pointe.</translation>
    </message>
    <message>
        <source>All tips are marked</source>
        <translation>Pointes marquées</translation>
    </message>
    <message>
        <source>Drill a small hole just beyond each crack tip</source>
        <translation>Percer un petit trou juste après chaque pointe</translation>
    </message>
    <message>
        <source>Cracks run on under the gel coat. Hole %1 to %2, right through.</source>
        <translation>Les fissures filent sous le gel coat. Trou de %1 à %2, traversant.</translation>
    </message>
    <message>
        <source>All tips drilled</source>
        <translation>Pointes percées</translation>
    </message>
    <message>
        <source>Take the squeezed-out adhesive off</source>
        <translation>Ôter les bavures de colle</translation>
    </message>
    <message>
        <source>Down to the panels, none pulled out of the joint.</source>
        <translation>À fleur des panneaux, sans arracher du joint.</translation>
    </message>
    <message>
        <source>Squeeze-out is off</source>
        <translation>Bavures ôtées</translation>
    </message>
    <message>
        <source>Grind the weld level with the contour</source>
        <translation>Meuler la soudure à fleur du galbe</translation>
    </message>
    <message>
        <source>Let it cool first. No pore may remain: weld it again where one does.</source>
        <translation>Laisser refroidir. Aucun pore ne doit rester&#xa0;: sinon ressouder.</translation>
    </message>
    <message>
        <source>Level, cool, free of pores</source>
        <translation>À fleur, froide, sans pore</translation>
    </message>
    <message>
        <source>Dry the panel and prove that it is dry</source>
        <translation>Sécher le panneau et le prouver</translation>
    </message>
    <message>
        <source>Front, edges and back. Tape clear film over it: no mist may form underneath.</source>
        <translation>Face, chants, dos. Coller un film clair&#xa0;: pas de buée dessous.</translation>
    </message>
    <message>
        <source>Proved dry</source>
        <translation>Sec, prouvé</translation>
    </message>
    <message>
        <source>Bevel the edge of the damage</source>
        <translation>Chanfreiner le bord du dommage</translation>
    </message>
    <message>
        <source>Run the bevel out over %1 all round. No square edge may remain.</source>
        <translation>Étirer le chanfrein sur %1 tout autour. Aucun bord vif.</translation>
    </message>
    <message>
        <source>Bevel is cut</source>
        <translation>Chanfrein fait</translation>
    </message>
    <message>
        <source>Bevel the edge on both faces</source>
        <translation>Chanfreiner le bord des deux faces</translation>
    </message>
    <message>
        <source>On each face run the bevel out over %1 all round. The two meet in the middle.</source>
        <translation>Par face, étirer le chanfrein sur %1 tout autour. Rencontre au milieu.</translation>
    </message>
    <message>
        <source>Both bevels are cut</source>
        <translation>Deux chanfreins faits</translation>
    </message>
    <message>
        <source>Open the gouge to a shallow V</source>
        <translation>Ouvrir l’entaille en V évasé</translation>
    </message>
    <message>
        <source>No loose fibre and no square edge may remain.</source>
        <translation>Ni fibre libre ni bord vif ne doit rester.</translation>
    </message>
    <message>
        <source>Gouge is open</source>
        <translation>Entaille ouverte</translation>
    </message>
    <message>
        <source>Bevel the upper panel’s edge slightly</source>
        <translation>Chanfreiner un peu le panneau du dessus</translation>
    </message>
    <message>
        <source>At most %1 deep, half its thickness. Never into the bond line.</source>
        <translation>%1 de profondeur au plus, demi-épaisseur. Jamais dans le collage.</translation>
    </message>
    <message>
        <source>Slight bevel is cut</source>
        <translation>Léger chanfrein fait</translation>
    </message>
    <message>
        <source>Abrade the back around the hole</source>
        <translation>Poncer le dos autour du trou</translation>
    </message>
    <message>
        <source>80 grit, down to clean glass, then dust it off.</source>
        <translation>Grain 80, jusqu’au verre propre, puis dépoussiérer.</translation>
    </message>
    <message>
        <source>Back is abraded</source>
        <translation>Dos poncé</translation>
    </message>
    <message>
        <source>Bond a backing behind the hole</source>
        <translation>Coller un renfort derrière le trou</translation>
    </message>
    <message>
        <source>Cloth and resin, or an offcut, lapping %1 all round. Let it cure.</source>
        <translation>Tissu et résine, ou une chute, recouvrant de %1. Laisser durcir.</translation>
    </message>
    <message>
        <source>Backing is on and cured</source>
        <translation>Renfort posé et durci</translation>
    </message>
    <message>
        <source>Pull a backing in through the hole and bond it</source>
        <translation>Passer un renfort par le trou et le coller</translation>
    </message>
    <message>
        <source>Close the hole with a dam of tape or card</source>
        <translation>Fermer le trou&#xa0;: barrage d’adhésif ou carton</translation>
    </message>
    <message>
        <source>Behind the missing area; tape on clean surface only.</source>
        <translation>Derrière le manque&#xa0;; adhésif sur surface propre seulement.</translation>
    </message>
    <message>
        <source>Dam is on</source>
        <translation>Barrage posé</translation>
    </message>
    <message>
        <source>Abrade bevel and surround with 80 grit</source>
        <translation>Poncer chanfrein et pourtour au grain 80</translation>
    </message>
    <message>
        <source>Dull all over, no shine left. Coarser only inside the filled area.</source>
        <translation>Mat partout, plus de brillant. Plus gros seulement dans la zone mastiquée.</translation>
    </message>
    <message>
        <source>Dull all over</source>
        <translation>Mat partout</translation>
    </message>
    <message>
        <source>Abrade the bare metal with 80 grit</source>
        <translation>Poncer le métal nu au grain 80</translation>
    </message>
    <message>
        <source>Bright all over, no rust in the pits. The hour until filling starts now.</source>
        <translation>Brillant partout, piqûres sans rouille. L’heure avant mastic court dès maintenant.</translation>
    </message>
    <message>
        <source>Bright all over</source>
        <translation>Brillant partout</translation>
    </message>
    <message>
        <source>Dust off with extraction, then with clean air</source>
        <translation>Dépoussiérer&#xa0;: aspiration, puis air propre</translation>
    </message>
    <message>
        <source>Dry, oil-free, below 30 psi (2 bar), with chip guarding. No solvent on ground fibre.</source>
        <translation>Sec, sans huile, sous 30&#xa0;psi (2&#xa0;bar), protection contre projections. Aucun solvant sur fibre poncée.</translation>
    </message>
    <message>
        <source>Free of dust</source>
        <translation>Sans poussière</translation>
    </message>
    <message>
        <source>Wipe the bare metal once, fast, and dry it</source>
        <translation>Essuyer le métal nu une fois, vite, sécher</translation>
    </message>
    <message>
        <source>Solvent on one clean cloth, a dry one right behind it.</source>
        <translation>Solvant sur chiffon propre, un chiffon sec juste derrière.</translation>
    </message>
    <message>
        <source>Wiped and dried</source>
        <translation>Essuyé et séché</translation>
    </message>
    <message>
        <source>Let the metal flash off</source>
        <translation>Laisser évaporer sur le métal</translation>
    </message>
    <message>
        <source>Metal has flashed off</source>
        <translation>Solvant évaporé</translation>
    </message>
    <message>
        <source>Read air, panel and humidity again</source>
        <translation>Remesurer air, panneau et humidité</translation>
    </message>
    <message>
        <source>Probe on the bare panel beside the damage. The dew margin is computed again.</source>
        <translation>Sonde sur le panneau nu, près du dommage. La marge de rosée est recalculée.</translation>
    </message>
    <message>
        <source>Reading is taken</source>
        <translation>Mesure faite</translation>
    </message>
    <message>
        <source>Probe on the bare metal beside the damage. The dew margin is computed again.</source>
        <translation>Sonde sur le métal nu, près du dommage. La marge de rosée est recalculée.</translation>
    </message>
    <message>
        <source>Put a guide coat over the repair</source>
        <translation>Poudrer le témoin sur la réparation</translation>
    </message>
    <message>
        <source>A thin, even veil; it shows what is high and what is low.</source>
        <translation>Voile fin et régulier&#xa0;; il montre hauts et creux.</translation>
    </message>
    <message>
        <source>Guide coat is on</source>
        <translation>Témoin posé</translation>
    </message>
    <message>
        <source>Sand to contour with 180 grit on a block</source>
        <translation>Poncer au galbe, grain 180, à la cale</translation>
    </message>
    <message>
        <source>Stop when the guide coat is gone. Where it stays, it is low.</source>
        <translation>Arrêter quand le témoin est parti. S’il reste, c’est creux.</translation>
    </message>
    <message>
        <source>Sanded with 180</source>
        <translation>Poncé au 180</translation>
    </message>
    <message>
        <source>Sand out to the edges with 320 grit</source>
        <translation>Poncer jusqu’aux bords au grain 320</translation>
    </message>
    <message>
        <source>No scratch of the coarser grit and no edge may remain.</source>
        <translation>Ni rayure du grain précédent ni bord ne doit rester.</translation>
    </message>
    <message>
        <source>Sanded with 320</source>
        <translation>Poncé au 320</translation>
    </message>
    <message>
        <source>Dust off the whole panel</source>
        <translation>Dépoussiérer tout le panneau</translation>
    </message>
    <message>
        <source>Extraction first, then clean, dry, oil-free air, below 30 psi (2 bar).</source>
        <translation>Aspirer, puis air propre, sec, sans huile, sous 30&#xa0;psi (2&#xa0;bar).</translation>
    </message>
    <message>
        <source>Inspect the surface in raking light</source>
        <translation>Contrôler en lumière rasante</translation>
    </message>
    <message>
        <source>No pinhole at half a metre, no edge, no guide coat. Pinholes are opened and filled, never buried.</source>
        <translation>Ni piqûre à 50&#xa0;cm, ni bord, ni témoin. Piqûres&#xa0;: ouvrir et mastiquer, jamais recouvrir.</translation>
    </message>
    <message>
        <source>Inspected, nothing found</source>
        <translation>Contrôlé, rien trouvé</translation>
    </message>
    <message>
        <source>Let it cure before the primer</source>
        <translation>Laisser durcir avant l’apprêt</translation>
    </message>
    <message>
        <source>At least %1 after the last sanding, at this temperature.</source>
        <translation>Au moins %1 après le dernier ponçage, à cette température.</translation>
    </message>
    <message>
        <source>It has cured</source>
        <translation>Durci</translation>
    </message>
    <message>
        <source>Look for guide coat that is left</source>
        <translation>Chercher le témoin restant</translation>
    </message>
    <message>
        <source>What is left shows a low spot.</source>
        <translation>Ce qui reste montre un creux.</translation>
    </message>
    <message>
        <source>Guide coat is gone</source>
        <translation>Témoin parti</translation>
    </message>
    <message>
        <source>Lay the straightedge across the repair, both ways</source>
        <translation>Poser la règle sur la réparation, en croix</translation>
    </message>
    <message>
        <source>On a curved panel, compare with the other side.</source>
        <translation>Panneau galbé&#xa0;: comparer à l’autre côté.</translation>
    </message>
    <message>
        <source>No gap, no rocking</source>
        <translation>Ni jour ni balancement</translation>
    </message>
    <message>
        <source>Look for pinholes in raking light</source>
        <translation>Chercher les piqûres en lumière rasante</translation>
    </message>
    <message>
        <source>From half a metre, light from the side. Pinholes are opened and filled, never buried.</source>
        <translation>À 50&#xa0;cm, lumière de côté. Piqûres&#xa0;: ouvrir et mastiquer, jamais recouvrir.</translation>
    </message>
    <message>
        <source>No pinhole</source>
        <translation>Aucune piqûre</translation>
    </message>
    <message>
        <source>Press a nail in, then rub with paper</source>
        <translation>Presser l’ongle, puis frotter au papier</translation>
    </message>
    <message>
        <source>The nail leaves no mark, and the paper powders the filler rather than clogs.</source>
        <translation>L’ongle ne marque pas, le papier poudre et n’encrasse pas.</translation>
    </message>
    <message>
        <source>No mark, it powders</source>
        <translation>Pas de marque, il poudre</translation>
    </message>
    <message>
        <source>Tap with a coin over repair and surround</source>
        <translation>Tapoter réparation et pourtour avec une pièce</translation>
    </message>
    <message>
        <source>A dull spot is hollow.</source>
        <translation>Un son mat&#xa0;: c’est creux.</translation>
    </message>
    <message>
        <source>It rings alike all over</source>
        <translation>Son égal partout</translation>
    </message>
    <message>
        <source>Feel for the edge with a flat hand</source>
        <translation>Chercher le bord, main à plat</translation>
    </message>
    <message>
        <source>Across it, through a thin cloth, eyes shut.</source>
        <translation>En travers, à travers un chiffon fin, yeux fermés.</translation>
    </message>
    <message>
        <source>No edge to feel</source>
        <translation>Aucun bord senti</translation>
    </message>
    <message>
        <source>Abrade the inside first. Wet cloth on a card, pulled up with wire, lapping %1, held until it cures.</source>
        <translation>D’abord poncer l’intérieur. Tissu imprégné sur carton, tiré au fil, recouvrant de %1, tenu jusqu’au durcissement.</translation>
    </message>
</context>
<context>
    <name>Stock</name>
    <message>
        <source>Used up</source>
        <translation>Épuisé</translation>
    </message>
    <message>
        <source>Skin on it</source>
        <translation>Peau dessus</translation>
    </message>
    <message>
        <source>Separated, kneading does not help</source>
        <translation>Séparé, malaxer n’aide pas</translation>
    </message>
    <message>
        <source>Hard or crumbly</source>
        <translation>Dur ou friable</translation>
    </message>
    <message>
        <source>Past its date</source>
        <translation>Date dépassée</translation>
    </message>
    <message>
        <source>Open for too long</source>
        <translation>Ouvert trop longtemps</translation>
    </message>
    <message>
        <source>Spoilt otherwise</source>
        <translation>Gâté autrement</translation>
    </message>
    <message>
        <source>Spilled</source>
        <translation>Renversé</translation>
    </message>
    <message>
        <source>Gone to another bench</source>
        <translation>Parti à un autre poste</translation>
    </message>
    <message>
        <source>Come from another bench</source>
        <translation>Venu d’un autre poste</translation>
    </message>
    <message>
        <source>Keyed in wrong</source>
        <translation>Mal saisi</translation>
    </message>
    <message>
        <source>It was ended (%1): take another lot.</source>
        <extracomment>%1 is why: &quot;Skin on it&quot;</extracomment>
        <translation>Il est fini (%1)&#xa0;: prendre un autre lot.</translation>
    </message>
    <message>
        <source>%1 more was used than was there: count it.</source>
        <translation>Pris %1 de plus qu’il n’y avait&#xa0;: le compter.</translation>
    </message>
    <message>
        <source>Too little: %1 is needed, %2 is left.</source>
        <translation>Trop peu&#xa0;: il faut %1, il reste %2.</translation>
    </message>
    <message>
        <source>Its date is past: it was good until %1.</source>
        <extracomment>%1 is a day</extracomment>
        <translation>Date dépassée&#xa0;: bon jusqu’au %1.</translation>
    </message>
    <message>
        <source>Open too long: since %1, its sheet allows %2 months.</source>
        <extracomment>%1 is a day, %2 a number of months</extracomment>
        <translation>Ouvert trop longtemps&#xa0;: depuis %1, sa fiche admet %2 mois.</translation>
    </message>
    <message>
        <source>It still evens out with the air: %1 to go.</source>
        <translation>Pas encore à la température de l’air&#xa0;: encore %1.</translation>
    </message>
    <message>
        <source>It came from a colder or hotter place: read the air first.</source>
        <translation>Il vient d’un lieu plus froid ou chaud : mesurer d’abord l’air.</translation>
    </message>
    <message>
        <source>Its middle was at %1: it is mixed from %2 to %3.</source>
        <translation>À cœur : %1 ; se mélange de %2 à %3.</translation>
    </message>
    <message>
        <source>New lot: make a test pat before the first batch.</source>
        <translation>Lot neuf&#xa0;: faire une galette d’essai avant le premier mélange.</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>%1 · lot %2</source>
        <extracomment>%1 is a product, %2 a lot</extracomment>
        <translation>%1 · lot %2</translation>
    </message>
    <message>
        <source>Came in</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Compté</translation>
    </message>
    <message>
        <source>Package ended: %1</source>
        <extracomment>%1 is why: &quot;skin on it&quot;</extracomment>
        <translation>Emballage fini&#xa0;: %1</translation>
    </message>
    <message>
        <source>A batch</source>
        <translation>Un mélange</translation>
    </message>
    <message>
        <source>Batch of job %1</source>
        <extracomment>%1 is a job&apos;s number</extracomment>
        <translation>Mélange du dossier %1</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Galette d’essai</translation>
    </message>
</context>
<context>
    <name>StockForms</name>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Stock de mastic et de durcisseur</translation>
    </message>
    <message>
        <source>What is booked in?</source>
        <translation>Qu’est-ce qui entre&#xa0;?</translation>
    </message>
    <message>
        <source>More products</source>
        <translation>Autres produits</translation>
    </message>
    <message>
        <source>How many packages, and how much in each?</source>
        <translation>Combien d’emballages, et combien dans chacun&#xa0;?</translation>
    </message>
    <message>
        <source>So many came in</source>
        <translation>Tant sont entrés</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Emballages</translation>
    </message>
    <message>
        <source>Key in how many packages</source>
        <translation>Saisir le nombre d’emballages</translation>
    </message>
    <message>
        <source>Net mass of one</source>
        <translation>Masse nette d’un</translation>
    </message>
    <message>
        <source>Key in the net mass of one</source>
        <translation>Saisir la masse nette d’un seul</translation>
    </message>
    <message>
        <source>Is a date printed on it?</source>
        <translation>Une date est-elle imprimée&#xa0;?</translation>
    </message>
    <message>
        <source>Yes, a date</source>
        <translation>Oui, une date</translation>
    </message>
    <message>
        <source>best before, or use by</source>
        <translation>à utiliser avant, ou péremption</translation>
    </message>
    <message>
        <source>No date</source>
        <translation>Sans date</translation>
    </message>
    <message>
        <source>its sheet’s months count from today</source>
        <translation>les mois de sa fiche comptent dès ce jour</translation>
    </message>
    <message>
        <source>Which date is printed?</source>
        <translation>Quelle date est imprimée&#xa0;?</translation>
    </message>
    <message>
        <source>This date</source>
        <translation>Cette date</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Année</translation>
    </message>
    <message>
        <source>Key in the year</source>
        <translation>Saisir l’année</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mois</translation>
    </message>
    <message>
        <source>Key in the month</source>
        <translation>Saisir le mois</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Key in the day; where none is printed, the last of the month</source>
        <translation>Saisir le jour&#xa0;; à défaut, le dernier du mois</translation>
    </message>
    <message>
        <source>Where no day is printed it is the last of the month.</source>
        <translation>Sans jour imprimé, c’est le dernier du mois.</translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation>Ce jour n’existe pas.</translation>
    </message>
    <message>
        <source>%1: past already</source>
        <translation>%1&#xa0;: déjà passée</translation>
    </message>
    <message>
        <source>How much of this lot is there, without the tubs?</source>
        <translation>Combien y a-t-il de ce lot, sans les pots&#xa0;?</translation>
    </message>
    <message>
        <source>So much is there</source>
        <translation>Il y en a tant</translation>
    </message>
    <message>
        <source>Thought to be there: %1.</source>
        <translation>Prévu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>%1 less than thought</source>
        <translation>%1 de moins que prévu</translation>
    </message>
    <message>
        <source>%1 more than thought</source>
        <translation>%1 de plus que prévu</translation>
    </message>
    <message>
        <source>As thought.</source>
        <translation>Comme prévu.</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Présent</translation>
    </message>
    <message>
        <source>Key in how much is there</source>
        <translation>Saisir combien il y a</translation>
    </message>
    <message>
        <source>Why is there more or less of it?</source>
        <translation>Pourquoi y en a-t-il plus ou moins&#xa0;?</translation>
    </message>
    <message>
        <source>there is less</source>
        <translation>il y en a moins</translation>
    </message>
    <message>
        <source>there is more</source>
        <translation>il y en a plus</translation>
    </message>
    <message>
        <source>%1: how much less is there?</source>
        <translation>%1&#xa0;: combien en moins&#xa0;?</translation>
    </message>
    <message>
        <source>%1: how much more is there?</source>
        <translation>%1&#xa0;: combien en plus&#xa0;?</translation>
    </message>
    <message>
        <source>By so much</source>
        <translation>De tant</translation>
    </message>
    <message>
        <source>Key in by how much</source>
        <translation>Saisir de combien</translation>
    </message>
    <message>
        <source>Why does the open one end?</source>
        <translation>Pourquoi finir l’emballage ?</translation>
    </message>
    <message>
        <source>More reasons</source>
        <translation>Autres raisons</translation>
    </message>
    <message>
        <source>End this package</source>
        <translation>Finir cet emballage</translation>
    </message>
    <message>
        <source>Waste of its kind, by the safety data sheet and local codes: never down the drain.</source>
        <translation>Déchet selon la fiche de sécurité et les règles locales&#xa0;: jamais à l’égout.</translation>
    </message>
    <message>
        <source>Thrown away</source>
        <translation>Jeté</translation>
    </message>
    <message>
        <source>Key in how much</source>
        <translation>Saisir combien</translation>
    </message>
    <message>
        <source>What does the probe in its middle read?</source>
        <translation>Que lit la sonde à cœur ?</translation>
    </message>
    <message>
        <source>How cold or hot was the place it came from?</source>
        <translation>Quelle température là d’où il vient&#xa0;?</translation>
    </message>
    <message>
        <source>It reads this</source>
        <translation>Elle lit cela</translation>
    </message>
    <message>
        <source>It came from there</source>
        <translation>Il vient de là</translation>
    </message>
    <message>
        <source>Its middle</source>
        <translation>À cœur</translation>
    </message>
    <message>
        <source>That place</source>
        <translation>Ce lieu</translation>
    </message>
    <message>
        <source>Key in the temperature</source>
        <translation>Saisir la température</translation>
    </message>
    <message>
        <source>Below how much is it reordered? Nothing: never</source>
        <translation>Sous quel seuil commander&#xa0;? Rien&#xa0;: jamais</translation>
    </message>
    <message>
        <source>This is the level</source>
        <translation>C’est le seuil</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Seuil</translation>
    </message>
    <message>
        <source>Key in the level</source>
        <translation>Saisir le seuil</translation>
    </message>
    <message>
        <source>Less by</source>
        <translation>En moins</translation>
    </message>
    <message>
        <source>More by</source>
        <translation>En plus</translation>
    </message>
    <message>
        <source>How much is thrown away with it?</source>
        <translation>Combien est jeté avec&#xa0;?</translation>
    </message>
</context>
<context>
    <name>StopWays</name>
    <message>
        <source>Look, measure, and answer the question.</source>
        <translation>Regarder, mesurer, répondre à la question.</translation>
    </message>
    <message>
        <source>Weld the plastic, or replace the part.</source>
        <translation>Souder le plastique, ou remplacer la pièce.</translation>
    </message>
    <message>
        <source>Repair it with a flexible system, or replace it.</source>
        <translation>Réparer avec un système souple, ou remplacer.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for carbon fibre.</source>
        <translation>Suivre la méthode du constructeur pour la fibre de carbone.</translation>
    </message>
    <message>
        <source>Replace the part.</source>
        <translation>Remplacer la pièce.</translation>
    </message>
    <message>
        <source>Find out what it is before you touch it.</source>
        <translation>Trouver la matière avant d’y toucher.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for this part.</source>
        <translation>Suivre la méthode du constructeur pour cette pièce.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for sensor areas.</source>
        <translation>Suivre la méthode du constructeur pour les zones de capteur.</translation>
    </message>
    <message>
        <source>Take it out of service and replace it.</source>
        <translation>Retirer du service et remplacer.</translation>
    </message>
    <message>
        <source>Strip it to the bare panel.</source>
        <translation>Décaper jusqu’au panneau nu.</translation>
    </message>
    <message>
        <source>Blast or cut it back to bright metal.</source>
        <translation>Sabler ou meuler jusqu’au métal brillant.</translation>
    </message>
    <message>
        <source>Let the primer cure, or strip it.</source>
        <translation>Laisser durcir le primaire, ou décaper.</translation>
    </message>
    <message>
        <source>Wash the flux off and grind to bright metal.</source>
        <translation>Laver le flux, meuler jusqu’au métal brillant.</translation>
    </message>
    <message>
        <source>Dry it, and prove that it is dry.</source>
        <translation>Sécher, et prouver que c’est sec.</translation>
    </message>
    <message>
        <source>Clean, prime and seal it to the vehicle maker’s pattern.</source>
        <translation>Nettoyer, apprêter, étancher selon le schéma du constructeur.</translation>
    </message>
    <message>
        <source>Look at the seam and the panel again.</source>
        <translation>Revoir le joint et le panneau.</translation>
    </message>
    <message>
        <source>Look at the hole and the panel again.</source>
        <translation>Revoir le trou et le panneau.</translation>
    </message>
    <message>
        <source>Let the adhesive cure to its sheet.</source>
        <translation>Laisser durcir la colle selon sa fiche.</translation>
    </message>
    <message>
        <source>Cut back to bright metal, then weld or patch.</source>
        <translation>Couper jusqu’au métal brillant, puis souder ou rapiécer.</translation>
    </message>
    <message>
        <source>Bring the metal up first.</source>
        <translation>D’abord redresser le métal.</translation>
    </message>
    <message>
        <source>Laminate it, or let in a section.</source>
        <translation>Stratifier, ou insérer une pièce.</translation>
    </message>
    <message>
        <source>Ask for a filler whose sheet allows it.</source>
        <translation>Demander un mastic dont la fiche l’autorise.</translation>
    </message>
    <message>
        <source>Wait for cooler air, or move to a cooler place.</source>
        <translation>Attendre un air plus frais, ou aller au frais.</translation>
    </message>
    <message>
        <source>Warm the panel right through, then read again.</source>
        <translation>Chauffer le panneau à cœur, puis remesurer.</translation>
    </message>
    <message>
        <source>Let the panel cool in the shade.</source>
        <translation>Laisser le panneau refroidir à l’ombre.</translation>
    </message>
    <message>
        <source>Warm the shop, the tub and the tube.</source>
        <translation>Chauffer l’atelier, le pot et le tube.</translation>
    </message>
    <message>
        <source>If you cannot tell, stop and ask.</source>
        <translation>Dans le doute, arrêter et demander.</translation>
    </message>
    <message>
        <source>The marking on the back names the plastic.</source>
        <translation>Le marquage au dos nomme le plastique.</translation>
    </message>
    <message>
        <source>The repair must bend with the part.</source>
        <translation>La réparation doit plier avec la pièce.</translation>
    </message>
    <message>
        <source>Damage inside must be found by those trained for it.</source>
        <translation>Les dommages internes relèvent de personnes formées.</translation>
    </message>
    <message>
        <source>Do not sand or drill it meanwhile.</source>
        <translation>En attendant, ni poncer ni percer.</translation>
    </message>
    <message>
        <source>Magnet, zinc gauge, ohmmeter, broken edge, back-face marking, tap sound.</source>
        <translation>Aimant, jauge de zinc, ohmmètre, bord cassé, marquage au dos, son.</translation>
    </message>
    <message>
        <source>What carries load is restored, never filled over.</source>
        <translation>Une pièce porteuse se rétablit, ne se mastique jamais.</translation>
    </message>
    <message>
        <source>The sensor may need calibrating afterwards.</source>
        <translation>Le capteur sera peut-être à recalibrer.</translation>
    </message>
    <message>
        <source>No grinding, drilling or heat near it.</source>
        <translation>Ni meulage, ni perçage, ni chaleur à proximité.</translation>
    </message>
    <message>
        <source>Well beyond the repair, edges feathered; then assess again.</source>
        <translation>Bien au-delà, bords en dégradé&#xa0;; puis réévaluer.</translation>
    </message>
    <message>
        <source>What is left thin or holed is cut out; then assess again.</source>
        <translation>Ce qui reste mince ou percé se coupe&#xa0;; puis réévaluer.</translation>
    </message>
    <message>
        <source>Cured epoxy that is abraded may stay; then assess again.</source>
        <translation>L’époxy durci et poncé peut rester&#xa0;; puis réévaluer.</translation>
    </message>
    <message>
        <source>Then assess again.</source>
        <translation>Puis réévaluer.</translation>
    </message>
    <message>
        <source>Only where the maker’s method calls for a continuous weld: weld, dress, then assess again.</source>
        <translation>Seulement si le constructeur demande un cordon continu&#xa0;: souder, meuler, puis réévaluer.</translation>
    </message>
    <message>
        <source>One of the two answers is wrong.</source>
        <translation>Une des deux réponses est fausse.</translation>
    </message>
    <message>
        <source>Then take the squeeze-out off and assess again.</source>
        <translation>Puis ôter les bavures et réévaluer.</translation>
    </message>
    <message>
        <source>Then it is a seam or a low spot: assess again.</source>
        <translation>C’est alors un joint ou un creux&#xa0;: réévaluer.</translation>
    </message>
    <message>
        <source>What stays low after that can be assessed again.</source>
        <translation>Le creux qui reste peut être réévalué.</translation>
    </message>
    <message>
        <source>On zinc, cured and abraded epoxy primer first is another way.</source>
        <translation>Sur zinc, autre voie&#xa0;: primaire époxy durci et poncé.</translation>
    </message>
    <message>
        <source>Temperature is never corrected with hardener.</source>
        <translation>La température ne se corrige jamais au durcisseur.</translation>
    </message>
    <message>
        <source>A lamp warms the panel before filling, never wet filler.</source>
        <translation>La lampe chauffe le panneau avant, jamais le mastic frais.</translation>
    </message>
    <message>
        <source>From the cold they need hours to even out.</source>
        <translation>Sortis du froid, il leur faut des heures.</translation>
    </message>
    <message>
        <source>to the plastics bench</source>
        <extracomment>goes on after &quot;Park it —&quot;</extracomment>
        <translation>vers l’atelier plastiques</translation>
    </message>
    <message>
        <source>to the laminate shop</source>
        <translation>vers l’atelier stratifié</translation>
    </message>
    <message>
        <source>to the parts counter</source>
        <translation>vers le magasin pièces</translation>
    </message>
    <message>
        <source>to the supervisor</source>
        <translation>vers le chef d’atelier</translation>
    </message>
    <message>
        <source>to the body shop</source>
        <translation>vers la carrosserie</translation>
    </message>
    <message>
        <source>to the stripping bay</source>
        <translation>vers le décapage</translation>
    </message>
    <message>
        <source>to the metal shop</source>
        <translation>vers la tôlerie</translation>
    </message>
    <message>
        <source>to the warm room</source>
        <translation>vers le local chauffé</translation>
    </message>
    <message>
        <source>to the welding shop</source>
        <translation>vers la soudure</translation>
    </message>
    <message>
        <source>to a cool place</source>
        <translation>vers un lieu frais</translation>
    </message>
    <message>
        <source>Check the sheet’s times against its maker’s data sheet.</source>
        <translation>Comparer les temps à la fiche du fabricant.</translation>
    </message>
    <message>
        <source>Until it is right, use a filler whose sheet is.</source>
        <translation>D’ici là, prendre un mastic dont la fiche est juste.</translation>
    </message>
    <message>
        <source>Follow the vehicle maker’s method for these parts.</source>
        <translation>Suivre la méthode du constructeur pour ces pièces.</translation>
    </message>
    <message>
        <source>Open it and renew the wet wood first.</source>
        <translation>Ouvrir et refaire d’abord le bois mouillé.</translation>
    </message>
    <message>
        <source>Have skin and core repaired as one.</source>
        <translation>Faire réparer peau et âme ensemble.</translation>
    </message>
    <message>
        <source>Airbags and high voltage only by those trained and licensed for them.</source>
        <translation>Airbags et haute tension&#xa0;: personnel formé et habilité seulement.</translation>
    </message>
    <message>
        <source>Tape clear film over it. When no mist forms underneath, assess again.</source>
        <translation>Coller un film clair. Si aucune buée dessous, réévaluer.</translation>
    </message>
    <message>
        <source>Laminate the skin shut and prove it dry; then assess again.</source>
        <translation>Refermer la peau au stratifié, prouver que c’est sec&#xa0;; puis réévaluer.</translation>
    </message>
    <message>
        <source>By the vehicle maker’s method, with a resin that leaves the foam whole.</source>
        <translation>Selon la méthode du constructeur, avec une résine qui n’attaque pas la mousse.</translation>
    </message>
    <message>
        <source>Aim at half of that limit or less; then assess again.</source>
        <translation>Viser la moitié de cette limite ou moins&#xa0;; puis réévaluer.</translation>
    </message>
</context>
<context>
    <name>Stops</name>
    <message>
        <source>Do not fill this panel</source>
        <translation>Ne pas mastiquer ce panneau</translation>
    </message>
    <message>
        <source>Do not fill in this zone</source>
        <translation>Ne pas mastiquer cette zone</translation>
    </message>
    <message>
        <source>Do not fill on this surface</source>
        <translation>Ne pas mastiquer cette surface</translation>
    </message>
    <message>
        <source>Do not fill over this core</source>
        <translation>Ne pas mastiquer sur cette âme</translation>
    </message>
    <message>
        <source>Do not fill this seam</source>
        <translation>Ne pas mastiquer ce joint</translation>
    </message>
    <message>
        <source>Do not fill this hole</source>
        <translation>Ne pas mastiquer ce trou</translation>
    </message>
    <message>
        <source>Do not fill yet</source>
        <translation>Ne pas encore mastiquer</translation>
    </message>
    <message>
        <source>These answers do not fit together</source>
        <translation>Ces réponses se contredisent</translation>
    </message>
    <message>
        <source>Not assessed yet</source>
        <translation>Pas encore évalué</translation>
    </message>
    <message>
        <source>Not assessed: %1.</source>
        <extracomment>%1 is a question of the assessment: &quot;kind of weld&quot;</extracomment>
        <translation>Non évalué&#xa0;: %1.</translation>
    </message>
    <message>
        <source>A question without an answer never counts as yes.</source>
        <translation>Une question sans réponse ne vaut jamais oui.</translation>
    </message>
    <message>
        <source>It is a thermoplastic.</source>
        <translation>C’est un thermoplastique.</translation>
    </message>
    <message>
        <source>Polyester does not bond to it and peels off as the panel bends.</source>
        <translation>Le polyester n’y adhère pas et pèle quand il plie.</translation>
    </message>
    <message>
        <source>It is a flexible plastic.</source>
        <translation>C’est un plastique souple.</translation>
    </message>
    <message>
        <source>Hard filler cracks off a part that bends.</source>
        <translation>Un mastic dur saute d’une pièce qui plie.</translation>
    </message>
    <message>
        <source>It is carbon fibre.</source>
        <translation>C’est de la fibre de carbone.</translation>
    </message>
    <message>
        <source>Its fibres carry load, and filler hides damage between the plies.</source>
        <translation>Ses fibres portent&#xa0;; le mastic cache les dommages entre plis.</translation>
    </message>
    <message>
        <source>It is cast plastic without fibre.</source>
        <translation>C’est un plastique coulé sans fibre.</translation>
    </message>
    <message>
        <source>It is brittle: the crack runs on beside the filler.</source>
        <translation>Il est cassant&#xa0;: la fissure file à côté du mastic.</translation>
    </message>
    <message>
        <source>It is magnesium.</source>
        <translation>C’est du magnésium.</translation>
    </message>
    <message>
        <source>Its dust burns, and it corrodes under filler.</source>
        <translation>Sa poussière brûle, et il se corrode sous mastic.</translation>
    </message>
    <message>
        <source>Nobody knows what it is made of.</source>
        <translation>Personne ne connaît sa matière.</translation>
    </message>
    <message>
        <source>The filler, the solvent and the tools all depend on it.</source>
        <translation>Le mastic, le solvant et les outils en dépendent.</translation>
    </message>
    <message>
        <source>This part carries load.</source>
        <translation>Cette pièce est porteuse.</translation>
    </message>
    <message>
        <source>Filler has no strength in a crash and hides what failed.</source>
        <translation>Le mastic ne tient pas au choc et cache la rupture.</translation>
    </message>
    <message>
        <source>Belts, seats, glass, airbags or high voltage are here.</source>
        <translation>Ici&#xa0;: ceintures, sièges, vitrage, airbags ou haute tension.</translation>
    </message>
    <message>
        <source>People depend on this part as it was built.</source>
        <translation>Des vies dépendent de cette pièce d’origine.</translation>
    </message>
    <message>
        <source>A driver-assistance sensor looks through here.</source>
        <translation>Un capteur d’aide à la conduite vise ici.</translation>
    </message>
    <message>
        <source>Filler and thick paint bend or block its beam.</source>
        <translation>Mastic et peinture épaisse dévient ou bloquent le faisceau.</translation>
    </message>
    <message>
        <source>It holds fuel or pressure.</source>
        <translation>Elle contient carburant ou pression.</translation>
    </message>
    <message>
        <source>Filler does not seal it, and grinding can set it alight.</source>
        <translation>Le mastic n’étanche pas, le meulage peut l’enflammer.</translation>
    </message>
    <message>
        <source>There is paint where the filler goes.</source>
        <translation>Il y a de la peinture là où va le mastic.</translation>
    </message>
    <message>
        <source>The filler holds only as well as the paint. Its edge shows later.</source>
        <translation>Le mastic ne tient qu’à la peinture. Son bord ressort.</translation>
    </message>
    <message>
        <source>There is old filler of an unknown kind.</source>
        <translation>Il y a un vieux mastic inconnu.</translation>
    </message>
    <message>
        <source>Nobody knows what it is or how it holds.</source>
        <translation>Personne ne sait ce que c’est ni sa tenue.</translation>
    </message>
    <message>
        <source>There is sealer or underseal.</source>
        <translation>Étanchéité ou antigravillon présent.</translation>
    </message>
    <message>
        <source>It stays soft, and filler slides on it.</source>
        <translation>Cela reste mou, le mastic glisse dessus.</translation>
    </message>
    <message>
        <source>There is live rust.</source>
        <translation>La rouille est active.</translation>
    </message>
    <message>
        <source>It goes on growing under the filler and lifts it off.</source>
        <translation>Elle avance sous le mastic et le soulève.</translation>
    </message>
    <message>
        <source>There is rust converter.</source>
        <translation>Il y a un convertisseur de rouille.</translation>
    </message>
    <message>
        <source>Its acid keeps the filler above it from curing.</source>
        <translation>Son acide empêche le mastic de durcir.</translation>
    </message>
    <message>
        <source>There is acid-etch primer.</source>
        <translation>Il y a un primaire réactif acide.</translation>
    </message>
    <message>
        <source>The primer has not cured.</source>
        <translation>Le primaire n’a pas durci.</translation>
    </message>
    <message>
        <source>The filler softens it, and both come off together.</source>
        <translation>Le mastic le ramollit, les deux se décollent.</translation>
    </message>
    <message>
        <source>There is solder with flux.</source>
        <translation>Il y a de l’étain avec flux.</translation>
    </message>
    <message>
        <source>Flux is acid and greasy: nothing holds on it.</source>
        <translation>Le flux est acide et gras&#xa0;: rien n’y tient.</translation>
    </message>
    <message>
        <source>Do not fill while it is damp</source>
        <translation>Ne pas mastiquer&#xa0;: humide</translation>
    </message>
    <message>
        <source>The panel is damp.</source>
        <translation>Le panneau est humide.</translation>
    </message>
    <message>
        <source>Water keeps the filler from wetting the surface, then makes blisters.</source>
        <translation>L’eau empêche le mastic de mouiller, puis fait des cloques.</translation>
    </message>
    <message>
        <source>There is a foam core under the laminate.</source>
        <translation>Il y a une âme en mousse sous le stratifié.</translation>
    </message>
    <message>
        <source>Styrene and heat attack foam, and the skin loses its support.</source>
        <translation>Styrène et chaleur attaquent la mousse&#xa0;; la peau perd son appui.</translation>
    </message>
    <message>
        <source>There is a wet wood core under the laminate.</source>
        <translation>Il y a une âme en bois mouillé sous le stratifié.</translation>
    </message>
    <message>
        <source>The water stays in, and the wood rots on below.</source>
        <translation>L’eau reste dedans, le bois pourrit dessous.</translation>
    </message>
    <message>
        <source>It is spot-welded: a joint, not damage.</source>
        <translation>Soudé par points&#xa0;: un joint, pas un dommage.</translation>
    </message>
    <message>
        <source>The panels move and hold water between the spots. The line shows through later, and rust creeps in.</source>
        <translation>Les tôles bougent, l’eau reste entre les points. La ligne ressort, la rouille gagne.</translation>
    </message>
    <message>
        <source>It is stitch-welded: a joint, not damage.</source>
        <translation>Soudé par cordons courts&#xa0;: un joint, pas un dommage.</translation>
    </message>
    <message>
        <source>The panels move and hold water in the gaps. The line shows through later, and rust creeps in.</source>
        <translation>Les tôles bougent, l’eau reste dans les vides. La ligne ressort, la rouille gagne.</translation>
    </message>
    <message>
        <source>A weld seam cannot be on %1.</source>
        <translation>Joint soudé impossible avec&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Either the seam is bonded, or the panel is metal.</source>
        <translation>Soit le joint est collé, soit le panneau est métallique.</translation>
    </message>
    <message>
        <source>A rust hole cannot be in %1.</source>
        <translation>Trou de rouille impossible avec&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Either the hole has another cause, or the panel is metal.</source>
        <translation>Soit autre cause, soit le panneau est métallique.</translation>
    </message>
    <message>
        <source>Do not fill this seam yet</source>
        <translation>Ne pas encore mastiquer ce joint</translation>
    </message>
    <message>
        <source>The adhesive has not cured.</source>
        <translation>La colle n’a pas durci.</translation>
    </message>
    <message>
        <source>It still shrinks and swells, and its line shows through the paint.</source>
        <translation>Elle travaille encore&#xa0;; sa ligne ressort sous la peinture.</translation>
    </message>
    <message>
        <source>Do not fill this crack</source>
        <translation>Ne pas mastiquer cette fissure</translation>
    </message>
    <message>
        <source>A crack in metal is fatigue or tearing.</source>
        <translation>Une fissure du métal&#xa0;: fatigue ou déchirure.</translation>
    </message>
    <message>
        <source>It runs on under the filler and opens again.</source>
        <translation>Elle file sous le mastic et se rouvre.</translation>
    </message>
    <message>
        <source>It is a hole in metal.</source>
        <translation>C’est un trou dans le métal.</translation>
    </message>
    <message>
        <source>Sheet metal has no section to bevel, so nothing holds the filler.</source>
        <translation>La tôle n’a pas d’épaisseur à chanfreiner&#xa0;: rien ne tient.</translation>
    </message>
    <message>
        <source>Rust has eaten through the metal.</source>
        <translation>La rouille a percé le métal.</translation>
    </message>
    <message>
        <source>The metal around it is thin and goes on rusting from behind.</source>
        <translation>Autour, le métal est mince et rouille par derrière.</translation>
    </message>
    <message>
        <source>Do not fill this dent yet</source>
        <translation>Ne pas encore mastiquer ce creux</translation>
    </message>
    <message>
        <source>It is %1 deep; filling ends at %2.</source>
        <translation>Profondeur %1&#xa0;; limite du mastic %2.</translation>
    </message>
    <message>
        <source>Thick filler on sheet metal shrinks, cracks and shows.</source>
        <translation>Épais sur tôle, le mastic se rétracte, fissure et se voit.</translation>
    </message>
    <message>
        <source>It is %1 across; filling ends at %2.</source>
        <translation>Largeur %1&#xa0;; limite du mastic %2.</translation>
    </message>
    <message>
        <source>Filler does not replace that much of a panel.</source>
        <translation>Le mastic ne remplace pas autant de panneau.</translation>
    </message>
    <message>
        <source>No filler fits here</source>
        <translation>Aucun mastic ne convient</translation>
    </message>
    <message>
        <source>No loaded filler suits %1 with this damage: %2.</source>
        <extracomment>%1 is a substrate, %2 a damage</extracomment>
        <translation>Aucun mastic enregistré ne convient&#xa0;: %1, %2.</translation>
    </message>
    <message>
        <source>No loaded sheet allows it, and nothing defaults to yes.</source>
        <translation>Aucune fiche enregistrée ne l’autorise&#xa0;; rien n’est oui d’office.</translation>
    </message>
    <message>
        <source>It would gel in %1; kneading alone takes %2.</source>
        <translation>Prise en %1&#xa0;; le malaxage seul prend %2.</translation>
    </message>
    <message>
        <source>It would set before it is spread. Less hardener is not the way.</source>
        <translation>Il prendrait avant l’étalement. Moins de durcisseur n’aide pas.</translation>
    </message>
    <message>
        <source>The panel’s margin over the dew point is %1; it needs %2.</source>
        <translation>Écart au point de rosée du panneau&#xa0;: %1&#xa0;; il faut %2.</translation>
    </message>
    <message>
        <source>Water you cannot see settles on it and keeps filler off.</source>
        <translation>De l’eau invisible s’y dépose et écarte le mastic.</translation>
    </message>
    <message>
        <source>The panel is at %1; filling starts at %2.</source>
        <translation>Panneau à %1&#xa0;; mastic à partir de %2.</translation>
    </message>
    <message>
        <source>Filler on a cold panel stays soft and does not grip.</source>
        <translation>Sur panneau froid, le mastic reste mou et n’accroche pas.</translation>
    </message>
    <message>
        <source>The panel is at %1; filling ends at %2.</source>
        <translation>Panneau à %1&#xa0;; mastic jusqu’à %2.</translation>
    </message>
    <message>
        <source>Filler on a hot panel gels before it wets the surface.</source>
        <translation>Sur panneau chaud, le mastic prend avant de mouiller.</translation>
    </message>
    <message>
        <source>The air is at %1; filling starts at %2.</source>
        <translation>Air à %1&#xa0;; mastic à partir de %2.</translation>
    </message>
    <message>
        <source>Cold filler and hardener cure slowly and unevenly.</source>
        <translation>Mastic et durcisseur froids durcissent lentement et inégalement.</translation>
    </message>
    <message>
        <source>The air is at %1; filling ends at %2.</source>
        <translation>Air à %1&#xa0;; mastic jusqu’à %2.</translation>
    </message>
    <message>
        <source>The mix gels on the board before it is spread.</source>
        <translation>Le mélange prend sur la palette avant l’étalement.</translation>
    </message>
    <message>
        <source>This sheet cannot be used</source>
        <translation>Cette fiche ne convient pas</translation>
    </message>
    <message>
        <source>Even a thin lift would pass %1 as it cures.</source>
        <translation>Même une passe fine dépasserait %1 en durcissant.</translation>
    </message>
    <message>
        <source>Too hot a lift shrinks, cracks and shows through later.</source>
        <translation>Une passe trop chaude se rétracte, se fissure et se marque plus tard.</translation>
    </message>
    <message>
        <source>Filler that cures so slowly may stay soft.</source>
        <translation>Un mastic si lent peut rester mou.</translation>
    </message>
    <message>
        <source>No cure runs like that: a slip in one of the two times is likely.</source>
        <translation>Aucun durcissement ne va ainsi : erreur probable dans l’un des deux temps.</translation>
    </message>
    <message>
        <source>By its sheet it never cures enough to be sanded.</source>
        <translation>Selon sa fiche il ne durcit jamais assez pour poncer.</translation>
    </message>
    <message>
        <source>Its greatest conversion is too low: a slip in the sheet is likely.</source>
        <translation>Sa conversion maximale est trop basse : erreur probable dans la fiche.</translation>
    </message>
    <message>
        <source>Its cure could not be worked out beyond %1.</source>
        <translation>Son durcissement n’a pu être calculé au-delà de %1.</translation>
    </message>
    <message>
        <source>The sheet’s figures make it run away faster than can be told.</source>
        <translation>Avec les valeurs de la fiche il s’emballe trop vite.</translation>
    </message>
    <message>
        <source>It would not sand within %1.</source>
        <translation>Il ne se poncerait pas en %1.</translation>
    </message>
    <message>
        <source>Sanding from %1 to %2 would fit; its sheet says otherwise.</source>
        <extracomment>%1 and %2 are the earliest and the latest sanding time</extracomment>
        <translation>Un ponçage de %1 à %2 irait ; la fiche dit autre chose.</translation>
    </message>
</context>
<context>
    <name>SupervisorScreens</name>
    <message>
        <source>Why is this stop overridden?</source>
        <translation>Pourquoi passer outre à cet arrêt ?</translation>
    </message>
    <message>
        <source>Which entry is to be put right?</source>
        <translation>Quelle entrée corriger ?</translation>
    </message>
    <message>
        <source>See what happened to the bench</source>
        <translation>Voir ce qui est arrivé au poste</translation>
    </message>
</context>
<context>
    <name>TakeInScreen</name>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Take in · %1</source>
        <translation>Entrée · %1</translation>
    </message>
    <message>
        <source>Key in the job number</source>
        <translation>Saisir le numéro de dossier</translation>
    </message>
    <message>
        <source>That is the job</source>
        <translation>C’est ce dossier</translation>
    </message>
    <message>
        <source>The job number is empty.</source>
        <translation>Le numéro de dossier est vide.</translation>
    </message>
    <message>
        <source>Key in 1 to %1 digits.</source>
        <translation>Saisir 1 à %1 chiffres.</translation>
    </message>
    <message>
        <source>Skirt panel, right rear</source>
        <translation>Bas de caisse, arrière droit</translation>
    </message>
    <message>
        <source>Skirt panel, left front</source>
        <translation>Bas de caisse, avant gauche</translation>
    </message>
    <message>
        <source>Bumper corner, left</source>
        <translation>Coin pare-chocs, gauche</translation>
    </message>
    <message>
        <source>Bumper corner, right</source>
        <translation>Coin pare-chocs, droit</translation>
    </message>
    <message>
        <source>Roof cap, front</source>
        <translation>Coiffe toit, avant</translation>
    </message>
    <message>
        <source>Luggage door, left</source>
        <translation>Porte de soute, gauche</translation>
    </message>
    <message>
        <source>Luggage door, right</source>
        <translation>Porte de soute, droite</translation>
    </message>
    <message>
        <source>Wheel arch, left</source>
        <translation>Passage roue, gauche</translation>
    </message>
    <message>
        <source>Wheel arch, right</source>
        <translation>Passage roue, droit</translation>
    </message>
    <message>
        <source>Engine cover</source>
        <translation>Capot moteur</translation>
    </message>
    <message>
        <source>Front apron</source>
        <translation>Jupe avant</translation>
    </message>
    <message>
        <source>Battery door</source>
        <translation>Trappe batterie</translation>
    </message>
    <message>
        <source>Another panel</source>
        <translation>Autre panneau</translation>
    </message>
    <message>
        <source>Technician 1</source>
        <translation>Technicien 1</translation>
    </message>
    <message>
        <source>Technician 2</source>
        <translation>Technicien 2</translation>
    </message>
    <message>
        <source>Technician 3</source>
        <translation>Technicien 3</translation>
    </message>
    <message>
        <source>Apprentice</source>
        <translation>Apprenti</translation>
    </message>
    <message>
        <source>Which panel is it?</source>
        <translation>Quel panneau&#xa0;?</translation>
    </message>
    <message>
        <source>Who is at the bench?</source>
        <translation>Qui est au poste&#xa0;?</translation>
    </message>
    <message>
        <source>The code is empty.</source>
        <translation>Le code est vide.</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>Le code a un caractère de contrôle.</translation>
    </message>
    <message>
        <source>The code has %1 characters.</source>
        <translation>Le code a %1 caractères.</translation>
    </message>
    <message>
        <source>Scan 1 to %1 letters and figures.</source>
        <translation>Scanner 1 à %1 lettres et chiffres.</translation>
    </message>
</context>
<context>
    <name>Tour</name>
    <message>
        <source>One panel, one card, one step at a time</source>
        <translation>Un panneau, une carte, une étape à la fois</translation>
    </message>
    <message>
        <source>Every repair hangs on the rail as a card. Tap it: the glass shows the one step that is next. Several run at once; none is lost.</source>
        <translation>Chaque réparation est une carte au bandeau. La toucher : l’écran montre la seule étape qui suit. Plusieurs courent à la fois ; aucune ne se perd.</translation>
    </message>
    <message>
        <source>First find out what it is</source>
        <translation>D’abord trouver ce que c’est</translation>
    </message>
    <message>
        <source>Magnet, gauge, edge and sound tell the material. What nobody can tell stays unknown, and unknown is a stop.</source>
        <translation>Aimant, jauge, bord et son disent la matière. Ce que nul ne peut dire reste inconnu, et l’inconnu est un arrêt.</translation>
    </message>
    <message>
        <source>A stop is an answer too</source>
        <translation>Un arrêt est aussi une réponse</translation>
    </message>
    <message>
        <source>Where filler does not belong, the glass says why, and what to do instead. You leave a stop by putting it right and assessing again.</source>
        <translation>Là où le mastic n’a pas sa place, l’écran dit pourquoi, et que faire d’autre. On quitte un arrêt en corrigeant et en réévaluant.</translation>
    </message>
    <message>
        <source>Prepare in order, gear first</source>
        <translation>Dans l’ordre, s’équiper d’abord</translation>
    </message>
    <message>
        <source>Each step is confirmed when it is done. Most repairs that fail were lost here.</source>
        <translation>Chaque étape se confirme une fois faite. La plupart des réparations ratées se sont perdues ici.</translation>
    </message>
    <message>
        <source>Puddle and bead are drawn at true size</source>
        <translation>Galette et cordon, dessinés en taille réelle</translation>
    </message>
    <message>
        <source>Lay filler and hardener as drawn, or weigh them. The clock starts when the hardener meets the filler: tap &apos;Hardener in&apos;.</source>
        <translation>Poser mastic et durcisseur comme dessinés, ou les peser. Le chrono part quand le durcisseur touche le mastic : toucher « Durcisseur mis ».</translation>
    </message>
    <message>
        <source>The clock counts to the next act</source>
        <translation>Le chrono compte jusqu’au prochain geste</translation>
    </message>
    <message>
        <source>Spread, clear the edges before it gels, then hands off. Every mix that runs stays in the dark bar at the top: tap it to go there.</source>
        <translation>Étaler, dégager les bords avant la prise, puis ne plus toucher. Chaque mélange en cours reste dans la barre sombre du haut&#xa0;: la toucher pour y aller.</translation>
    </message>
    <message>
        <source>Sand when nail and paper say so</source>
        <translation>Poncer quand ongle et papier le disent</translation>
    </message>
    <message>
        <source>No mark by the nail, powder on the paper. Then the next lift, the other face, or the finish.</source>
        <translation>Pas de marque d’ongle, de la poudre sur le papier. Puis la passe suivante, l’autre face ou la finition.</translation>
    </message>
    <message>
        <source>Now practise: nothing here is in the shop’s record</source>
        <translation>À présent, s’exercer&#xa0;: rien ici ne va au journal de l’atelier</translation>
    </message>
    <message>
        <source>On a practice panel you decide alone, and see what it would have come to. Safety data sheet and the vehicle maker’s manual come first, at the bench as here.</source>
        <translation>Sur un panneau d’exercice, on décide seul, et on voit ce que cela aurait donné. La fiche de données de sécurité et le manuel du constructeur priment, au poste comme ici.</translation>
    </message>
    <message>
        <source>Tour, %1 of %2</source>
        <translation>Visite, %1 sur %2</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Débuter</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Suite</translation>
    </message>
    <message>
        <source>Skip the tour</source>
        <translation>Passer la visite</translation>
    </message>
</context>
<context>
    <name>Traps</name>
    <message>
        <source>The crack runs on past the crazing that is seen.</source>
        <translation>La fissure court au-delà du faïençage visible.</translation>
    </message>
    <message>
        <source>SMC passes for hand laminate until its edge is looked at.</source>
        <translation>Le SMC passe pour du stratifié main tant qu’on n’a pas vu son bord.</translation>
    </message>
    <message>
        <source>It looks dry, and is too near its dew point.</source>
        <translation>Il paraît sec, et il est trop près du point de rosée.</translation>
    </message>
    <message>
        <source>Just above the dew point is not enough.</source>
        <translation>Juste au-dessus du point de rosée ne suffit pas.</translation>
    </message>
    <message>
        <source>A weak magnet means old filler over steel.</source>
        <translation>Un aimant qui tient mal&#xa0;: vieux mastic sur acier.</translation>
    </message>
    <message>
        <source>The weld is hot and full of pores.</source>
        <translation>La soudure est chaude et pleine de pores.</translation>
    </message>
    <message>
        <source>A spot-welded seam invites welding up: it is a joint.</source>
        <translation>Une ligne de points invite à souder en plein&#xa0;: c’est un joint.</translation>
    </message>
    <message>
        <source>Only from behind it is seen that the weld is stitched.</source>
        <translation>Seul l’arrière montre que ce sont des cordons courts.</translation>
    </message>
    <message>
        <source>Black rust converter looks sound, and a belt is mounted near.</source>
        <translation>Le convertisseur noir paraît sain, et une ceinture est ancrée tout près.</translation>
    </message>
    <message>
        <source>The zinc was ground away here; beside it the gauge finds it.</source>
        <translation>Ici le zinc a été meulé&#xa0;; à côté, la jauge le trouve.</translation>
    </message>
    <message>
        <source>Steel in aluminium corrodes overnight.</source>
        <translation>L’acier dans l’aluminium corrode en une nuit.</translation>
    </message>
    <message>
        <source>The squeezed-out adhesive is still soft.</source>
        <translation>La colle qui a bavé est encore molle.</translation>
    </message>
    <message>
        <source>It rings hard under its paint, and sands to strings.</source>
        <translation>Il sonne dur sous sa peinture, et se ponce en fils.</translation>
    </message>
    <message>
        <source>Carbon under paint: only the ohmmeter tells.</source>
        <translation>Carbone sous peinture&#xa0;: seul l’ohmmètre le dit.</translation>
    </message>
    <message>
        <source>It powders like SMC, and has no fibre in it.</source>
        <translation>Il poudre comme le SMC, et n’a pas de fibre.</translation>
    </message>
    <message>
        <source>Etch primer looks good, and polyester does not hold on it.</source>
        <translation>Le primaire réactif a bel aspect, et le polyester n’y tient pas.</translation>
    </message>
    <message>
        <source>A sensor looks through here.</source>
        <translation>Un capteur vise par ici.</translation>
    </message>
    <message>
        <source>It is the wall of a tank.</source>
        <translation>C’est la paroi d’un réservoir.</translation>
    </message>
    <message>
        <source>Under the skin there is foam.</source>
        <translation>Sous la peau, il y a de la mousse.</translation>
    </message>
</context>
<context>
    <name>WeighScreen</name>
    <message>
        <source>Planned: %1. Tare the scale before each.</source>
        <translation>Prévu&#xa0;: %1. Tarer la balance avant chacun.</translation>
    </message>
    <message>
        <source>How much was weighed of each?</source>
        <translation>Combien pesé de chacun&#xa0;?</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Durcisseur mis : départ</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Mastic</translation>
    </message>
    <message>
        <source>Key in the filler weighed</source>
        <translation>Saisir le mastic pesé</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>Key in the hardener weighed</source>
        <translation>Saisir le durcisseur pesé</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>prepare</source>
        <translation>préparer</translation>
    </message>
    <message>
        <source>dry and flash off</source>
        <translation>sécher et évaporer</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mélanger</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>étaler</translation>
    </message>
    <message>
        <source>hands off</source>
        <translation>ne pas toucher</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>poncer</translation>
    </message>
    <message>
        <source>turn the panel</source>
        <translation>retourner</translation>
    </message>
    <message>
        <source>finish</source>
        <translation>finition</translation>
    </message>
    <message>
        <source>guide coat dries</source>
        <translation>séchage du témoin</translation>
    </message>
    <message>
        <source>cure before primer</source>
        <translation>durcir avant apprêt</translation>
    </message>
    <message>
        <source>Nobody may override this.</source>
        <translation>Nul ne peut passer outre.</translation>
    </message>
    <message>
        <source>Only the supervisor may override, with a reason.</source>
        <translation>Seul le chef d’atelier peut passer outre, avec un motif.</translation>
    </message>
    <message>
        <source>Park it</source>
        <translation>Attente</translation>
    </message>
    <message>
        <source>Park it — %1</source>
        <extracomment>%1 is where it goes: &quot;to the welding shop&quot;</extracomment>
        <translation>Attente — %1</translation>
    </message>
    <message>
        <source>Job %1</source>
        <extracomment>%1 is the job&apos;s number</extracomment>
        <translation>Dossier %1</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es)</source>
        <translation>
            <numerusform>%n mélange</numerusform>
            <numerusform>%n mélanges</numerusform>
        </translation>
    </message>
    <message>
        <source>The maker’s repair manual, local codes and licensed practice come first.</source>
        <translation>Priment : manuel du constructeur, règles locales, habilitations.</translation>
    </message>
    <message>
        <source>input</source>
        <translation>saisie</translation>
    </message>
</context>
<context>
    <name>strandbench::BeadTrialScreen</name>
    <message>
        <source>Bead of the hardener’s tube</source>
        <translation>Cordon du tube de durcisseur</translation>
    </message>
    <message>
        <source>Tell the hardener’s lot first</source>
        <translation>Indiquer d’abord le lot de durcisseur</translation>
    </message>
    <message>
        <source>A nozzle belongs to its tube. Which lot of hardener is open was not told: tell it where a batch is mixed, then calibrate.</source>
        <translation>Une buse va avec son tube. Le lot de durcisseur ouvert n’est pas indiqué&#xa0;: l’indiquer au mélange, puis étalonner.</translation>
    </message>
    <message>
        <source>What the beads come to</source>
        <translation>Ce que donnent les cordons</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Le garder</translation>
    </message>
    <message>
        <source>Nothing to keep yet</source>
        <translation>Rien à garder encore</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <extracomment>%1 is a number, %2 a length, %3 a mass, %4 a mass per length: &quot;1: 100 mm, 2.31 g, 23.1 mg/mm&quot;</extracomment>
        <translation>%1&#xa0;: %2, %3, %4</translation>
    </message>
    <message>
        <source>Scatter %1, at most %2. It holds for this lot until another is opened.</source>
        <translation>Dispersion %1, au plus %2. Vaut pour ce lot jusqu’à l’ouverture d’un autre.</translation>
    </message>
    <message>
        <source>%1 of at least %2 beads are laid.</source>
        <translation>%1 cordons posés sur %2 au moins.</translation>
    </message>
    <message>
        <source>The beads scatter by %1, at most %2 is of use. Lay them again, straight and at one push.</source>
        <translation>Les cordons varient de %1, au plus %2 est utilisable. Les reposer, droits et d’une seule poussée.</translation>
    </message>
    <message>
        <source>One more bead</source>
        <translation>Encore un cordon</translation>
    </message>
    <message>
        <source>Begin anew</source>
        <translation>Recommencer</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>tenir 1&#xa0;s</translation>
    </message>
</context>
<context>
    <name>strandbench::BenchWindow</name>
    <message>
        <source>The set-up could not be saved.</source>
        <translation>Réglages non enregistrés.</translation>
    </message>
    <message>
        <source>It holds until the program is closed.</source>
        <translation>Valables jusqu’à la fermeture du programme.</translation>
    </message>
    <message>
        <source>Scanned %1: not wanted here.</source>
        <translation>Scanné %1&#xa0;: pas attendu ici.</translation>
    </message>
    <message>
        <source>A scan came without its Enter. Set the scanner to end with Enter.</source>
        <translation>Code reçu sans Entrée. Régler le lecteur pour finir par Entrée.</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to sign off</source>
        <translation>Code du chef d’atelier, pour viser</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to override</source>
        <translation>Code du chef d’atelier, pour passer outre</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to forget them</source>
        <translation>Code du chef d’atelier, pour oublier</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to put it right</source>
        <translation>Code du chef d’atelier, pour corriger</translation>
    </message>
    <message>
        <source>The supervisor’s PIN</source>
        <translation>Le code du chef d’atelier</translation>
    </message>
    <message>
        <source>signs as %1</source>
        <translation>signe %1</translation>
    </message>
    <message>
        <source>Give the PIN</source>
        <translation>Donner le code</translation>
    </message>
    <message>
        <source>What is right?</source>
        <translation>Qu’est-ce qui est juste ?</translation>
    </message>
    <message>
        <source>Put it right</source>
        <translation>Corriger</translation>
    </message>
    <message>
        <source>The PIN that holds now</source>
        <translation>Le code qui vaut à présent</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Key in the new PIN</source>
        <translation>Saisir le nouveau code</translation>
    </message>
    <message>
        <source>Key in the new PIN again</source>
        <translation>Ressaisir le nouveau code</translation>
    </message>
    <message>
        <source>Set this PIN</source>
        <translation>Fixer ce code</translation>
    </message>
    <message>
        <source>The two are not the same.</source>
        <translation>Les deux diffèrent.</translation>
    </message>
    <message>
        <source>Go back and key it in anew.</source>
        <translation>Revenir et le ressaisir.</translation>
    </message>
    <message>
        <source>This PIN is too easy to guess.</source>
        <translation>Ce code se devine trop facilement.</translation>
    </message>
    <message>
        <source>Go back and choose another.</source>
        <translation>Revenir et en choisir un autre.</translation>
    </message>
    <message>
        <source>Only looking: another copy of the program has this bench.</source>
        <translation>Lecture seule : une autre copie du programme tient ce poste.</translation>
    </message>
    <message>
        <source>In which folder are the pictures?</source>
        <translation>Dans quel répertoire sont les photos ?</translation>
    </message>
    <message>
        <source>Into which folder do backups go?</source>
        <translation>Dans quel répertoire vont les sauvegardes ?</translation>
    </message>
    <message>
        <source>In which folder is it?</source>
        <translation>Dans quel répertoire est-ce ?</translation>
    </message>
    <message>
        <source>Something is being kept just now.</source>
        <translation>Une sauvegarde est en cours.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Réessayer dans un instant.</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to restore</source>
        <translation>Code du chef d’atelier, pour restaurer</translation>
    </message>
    <message>
        <source>Only looking: the log cannot be written.</source>
        <translation>Lecture seule&#xa0;: le journal ne s’écrit pas.</translation>
    </message>
    <message>
        <source>Log damaged, nothing is written: restore a backup.</source>
        <translation>Journal abîmé, rien ne s’écrit&#xa0;: restaurer une sauvegarde.</translation>
    </message>
    <message numerus="yes">
        <source>%n act(s) wait.</source>
        <translation>
            <numerusform>%n action attend.</numerusform>
            <numerusform>%n actions attendent.</numerusform>
        </translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Fiches produit</translation>
    </message>
    <message>
        <source>What kind of filler is it?</source>
        <translation>Quel type de mastic est-ce&#xa0;?</translation>
    </message>
    <message>
        <source>Into which folder does the sheet go?</source>
        <translation>Dans quel répertoire va la fiche ?</translation>
    </message>
    <message>
        <source>Written into %1: %2 as JSON and CSV.</source>
        <extracomment>%1 is a folder, %2 a file&apos;s name without its ending</extracomment>
        <translation>Écrit dans %1&#xa0;: %2 en JSON et CSV.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Pas écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, for the product sheet</source>
        <translation>Code du chef d’atelier, pour la fiche</translation>
    </message>
    <message>
        <source>No lot of hardener is known.</source>
        <translation>Aucun lot de durcisseur n’est connu.</translation>
    </message>
    <message>
        <source>Book in the tube that is open, then try.</source>
        <translation>Entrer le tube ouvert, puis essayer.</translation>
    </message>
    <message>
        <source>Into which folder does the recall list go?</source>
        <translation>Dans quel répertoire va la liste de rappel ?</translation>
    </message>
    <message>
        <source>Returned by the supervisor</source>
        <translation>Renvoyé par le chef d’atelier</translation>
    </message>
    <message>
        <source>What is to be mended?</source>
        <translation>Que faut-il reprendre&#xa0;?</translation>
    </message>
    <message>
        <source>Return it</source>
        <translation>Renvoyer</translation>
    </message>
    <message>
        <source>Supervisor’s PIN, to return it</source>
        <translation>Code du chef d’atelier, pour renvoyer</translation>
    </message>
</context>
<context>
    <name>strandbench::CameraScreen</name>
    <message>
        <source>Take it again</source>
        <translation>Reprendre la photo</translation>
    </message>
    <message>
        <source>Another camera</source>
        <translation>Autre caméra</translation>
    </message>
    <message>
        <source>No camera is there.</source>
        <translation>Aucune caméra n’est là.</translation>
    </message>
    <message>
        <source>Plug the camera in again, or choose from a folder.</source>
        <translation>Rebrancher la caméra ou choisir dans un répertoire.</translation>
    </message>
    <message>
        <source>Point the camera: %1</source>
        <translation>Viser avec la caméra&#xa0;: %1</translation>
    </message>
    <message>
        <source>Waiting for the camera</source>
        <translation>En attente de la caméra</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Prendre la photo</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Ce que voit la caméra</translation>
    </message>
    <message>
        <source>Check the photo: %1</source>
        <translation>Vérifier la photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>Keep this photo</source>
        <translation>Garder cette photo</translation>
    </message>
    <message>
        <source>The photo taken</source>
        <translation>La photo prise</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>%1 is not there any more.</source>
        <extracomment>%1 is what the camera calls itself</extracomment>
        <translation>%1 n’est plus là.</translation>
    </message>
    <message>
        <source>%1 is in use elsewhere.</source>
        <translation>%1 est déjà utilisé.</translation>
    </message>
    <message>
        <source>End what uses it, or choose from a folder.</source>
        <translation>Fermer ce qui l’utilise ou choisir dans un répertoire.</translation>
    </message>
    <message>
        <source>The bench may not use %1.</source>
        <translation>Le poste n’a pas droit à %1.</translation>
    </message>
    <message>
        <source>Have it allowed, or choose from a folder.</source>
        <translation>Le faire autoriser ou choisir dans un répertoire.</translation>
    </message>
    <message>
        <source>%1 gives no picture that can be kept.</source>
        <translation>%1 ne donne aucune image à garder.</translation>
    </message>
    <message>
        <source>Take another camera, or choose from a folder.</source>
        <translation>Prendre une autre caméra ou choisir dans un répertoire.</translation>
    </message>
    <message>
        <source>%1 sends no picture.</source>
        <translation>%1 n’envoie aucune image.</translation>
    </message>
    <message>
        <source>%1 failed: %2.</source>
        <extracomment>%1 is what the camera calls itself, %2 what the system says</extracomment>
        <translation>%1 a échoué&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Take it again, or choose from a folder.</source>
        <translation>La reprendre ou choisir dans un répertoire.</translation>
    </message>
    <message>
        <source>The photo is larger than %1 MB.</source>
        <translation>La photo dépasse %1&#xa0;Mo.</translation>
    </message>
    <message>
        <source>%1 gave no whole picture.</source>
        <translation>%1 n’a pas donné d’image entière.</translation>
    </message>
</context>
<context>
    <name>strandbench::ClockScreen</name>
    <message>
        <source>clock runs on</source>
        <translation>chrono en cours</translation>
    </message>
    <message>
        <source>from the sheet, not yet from this panel’s heat</source>
        <translation>selon la fiche, pas encore selon ce panneau</translation>
    </message>
    <message>
        <source>It has gelled</source>
        <translation>Il a pris</translation>
    </message>
    <message>
        <source>tap when it pulls and will not smear</source>
        <translation>signaler quand il tire et ne s’étale plus</translation>
    </message>
    <message>
        <source>It sands already</source>
        <translation>Il se ponce déjà</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>tenir 1&#xa0;s</translation>
    </message>
    <message>
        <source>On the board</source>
        <translation>Sur la palette</translation>
    </message>
    <message>
        <source>On the panel</source>
        <translation>Sur le panneau</translation>
    </message>
    <message>
        <source>Phases of this batch to time scale</source>
        <translation>Phases de ce mélange, à l’échelle du temps</translation>
    </message>
    <message>
        <source>the board has set</source>
        <translation>la palette a pris</translation>
    </message>
    <message>
        <source>board sets in %1</source>
        <translation>palette prise dans %1</translation>
    </message>
    <message>
        <source>Edges are clear</source>
        <translation>Bords dégagés</translation>
    </message>
    <message>
        <source>Knead firmly: no air, no streaks</source>
        <translation>Malaxer à fond&#xa0;: ni air ni traînées</translation>
    </message>
    <message>
        <source>until you spread</source>
        <translation>avant d’étaler</translation>
    </message>
    <message>
        <source>Press in firmly, wet the edges, fill to level</source>
        <translation>Serrer fort, mouiller les bords, remplir à fleur</translation>
    </message>
    <message>
        <source>until the edges must be clear</source>
        <translation>avant bords dégagés</translation>
    </message>
    <message>
        <source>Clear the edges now</source>
        <translation>Dégager les bords</translation>
    </message>
    <message>
        <source>until it gels</source>
        <translation>avant la prise</translation>
    </message>
    <message>
        <source>since hardener in</source>
        <translation>depuis le durcisseur</translation>
    </message>
    <message>
        <source>Nail and paper say: it sands</source>
        <translation>Ongle et papier&#xa0;: il se ponce</translation>
    </message>
    <message>
        <source>Hands off: let it cure</source>
        <translation>Ne pas toucher&#xa0;: il durcit</translation>
    </message>
    <message>
        <source>until it may be tested</source>
        <translation>avant l’essai</translation>
    </message>
    <message>
        <source>Nail leaves no mark, paper powders: then sand</source>
        <translation>L’ongle ne marque pas, le papier poudre&#xa0;: poncer</translation>
    </message>
    <message>
        <source>of easy sanding left</source>
        <translation>de ponçage facile restant</translation>
    </message>
    <message>
        <source>since hardener in: it gets harder</source>
        <translation>depuis le durcisseur&#xa0;: il durcit</translation>
    </message>
    <message>
        <source>from the sheet, for this layer on this panel</source>
        <translation>selon la fiche, pour cette passe sur ce panneau</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Courbe</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>gels between %1 and %2</source>
        <translation>prend entre %1 et %2</translation>
    </message>
    <message>
        <source>sands from between %1 and %2</source>
        <translation>se ponce dès %1 à %2</translation>
    </message>
    <message>
        <source>As read at %1, before: %2.</source>
        <translation>Mesuré à %1 (avant : %2).</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Remesurer</translation>
    </message>
    <message>
        <source>It may have gelled: hands off</source>
        <translation>Il a pu prendre&#xa0;: ne plus toucher</translation>
    </message>
    <message>
        <source>until it sands, at the latest</source>
        <translation>avant de poncer, au plus tard</translation>
    </message>
</context>
<context>
    <name>strandbench::ClosingScreen</name>
    <message>
        <source>Deviation</source>
        <translation>Écart</translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>The record holds what is asked for</source>
        <translation>L’historique contient ce qui est demandé</translation>
    </message>
    <message numerus="yes">
        <source>The record lacks %n thing(s)</source>
        <translation>
            <numerusform>Il manque %n chose à l’historique</numerusform>
            <numerusform>Il manque %n choses à l’historique</numerusform>
        </translation>
    </message>
    <message>
        <source>Signed off: %1, %2</source>
        <translation>Visé : %1, %2</translation>
    </message>
    <message>
        <source>Returned: %1. %2, %3</source>
        <extracomment>%1 is a reason, %2 a person, %3 a day and a time</extracomment>
        <translation>Renvoyé&#xa0;: %1. %2, %3</translation>
    </message>
    <message>
        <source>Sign off</source>
        <translation>Viser</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>chef d’atelier</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Renvoyer</translation>
    </message>
    <message>
        <source>What it does again</source>
        <translation>Ce qu’elle reprend</translation>
    </message>
    <message>
        <source>Its rework</source>
        <translation>Sa reprise</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Corriger</translation>
    </message>
</context>
<context>
    <name>strandbench::CurveScreen</name>
    <message>
        <source>What goes on inside this layer</source>
        <translation>Ce qui se passe dans cette passe</translation>
    </message>
    <message>
        <source>clock runs on</source>
        <translation>chrono en cours</translation>
    </message>
    <message>
        <source>Back to the clock</source>
        <translation>Retour au chrono</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>face</source>
        <translation>surface</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>durci</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>sands</source>
        <translation>ponçage</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
    <message>
        <source>Temperatures and cure of this layer against time</source>
        <translation>Températures et durcissement de cette passe dans le temps</translation>
    </message>
    <message>
        <source>Gels after</source>
        <translation>Prise après</translation>
    </message>
    <message>
        <source>Sands after</source>
        <translation>Ponçage après</translation>
    </message>
    <message>
        <source>Hottest, limit %1</source>
        <translation>Maximum, limite %1</translation>
    </message>
    <message>
        <source>Hottest</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Cured by now</source>
        <translation>Durci à présent</translation>
    </message>
</context>
<context>
    <name>strandbench::DayReviewScreen</name>
    <message>
        <source>Reading …</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>Nothing was worked on that day.</source>
        <translation>Rien n’a été travaillé ce jour-là.</translation>
    </message>
    <message>
        <source>Next to look through</source>
        <translation>Suivante à examiner</translation>
    </message>
    <message>
        <source>Day before</source>
        <translation>Veille</translation>
    </message>
    <message>
        <source>Day after</source>
        <translation>Lendemain</translation>
    </message>
    <message>
        <source>Narrow down</source>
        <translation>Restreindre</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Chiffres</translation>
    </message>
    <message>
        <source>Day’s sheets</source>
        <translation>Feuilles du jour</translation>
    </message>
    <message>
        <source>Reading %1 of %2 …</source>
        <extracomment>how many repairs of how many were read</extracomment>
        <translation>Lecture de %1 sur %2…</translation>
    </message>
    <message numerus="yes">
        <source>%n to sign off or return</source>
        <translation>
            <numerusform>%n à viser ou renvoyer</numerusform>
            <numerusform>%n à viser ou renvoyer</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing to sign off</source>
        <translation>Rien à viser</translation>
    </message>
    <message numerus="yes">
        <source>%n repair(s)</source>
        <translation>
            <numerusform>%n réparation</numerusform>
            <numerusform>%n réparations</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n need eyes first</source>
        <translation>
            <numerusform>%n à voir d’abord</numerusform>
            <numerusform>%n à voir d’abord</numerusform>
        </translation>
    </message>
    <message>
        <source>mixed %1, planned %2</source>
        <extracomment>two masses of filler</extracomment>
        <translation>mélangé %1, prévu %2</translation>
    </message>
    <message>
        <source>work %1, planned %2</source>
        <extracomment>two times of work</extracomment>
        <translation>travail %1, prévu %2</translation>
    </message>
    <message>
        <source>A record that cannot be read</source>
        <translation>Un historique illisible</translation>
    </message>
    <message>
        <source>rework</source>
        <translation>reprise</translation>
    </message>
</context>
<context>
    <name>strandbench::DaySheetsScreen</name>
    <message>
        <source>Choose where the day’s sheets go</source>
        <translation>Choisir où vont les feuilles du jour</translation>
    </message>
    <message>
        <source>A record of this day cannot be read.</source>
        <translation>Un historique de ce jour est illisible.</translation>
    </message>
</context>
<context>
    <name>strandbench::DewScreen</name>
    <message>
        <source>Panel above its dew point</source>
        <translation>Écart du panneau à son point de rosée</translation>
    </message>
    <message>
        <source>The least margin follows the practice of ISO 8502-4 and ISO 12944-7; a sheet that asks for more comes first.</source>
        <translation>L’écart minimal suit la pratique des ISO 8502-4 et ISO 12944-7&#xa0;; une fiche qui exige plus passe d’abord.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing was read in the last %n day(s).</source>
        <translation>
            <numerusform>Rien n’a été mesuré depuis %n jour.</numerusform>
            <numerusform>Rien n’a été mesuré depuis %n jours.</numerusform>
        </translation>
    </message>
    <message>
        <source>Margin over the dew point against the time of day, %1</source>
        <translation>Écart au point de rosée selon l’heure, %1</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>limite %1</translation>
    </message>
    <message>
        <source>below the limit</source>
        <translation>sous la limite</translation>
    </message>
    <message>
        <source>%1, last read at %2</source>
        <extracomment>a day, and the time of its last reading</extracomment>
        <translation>%1, dernière mesure à %2</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>%1 above dew point</source>
        <translation>%1 au-dessus du point de rosée</translation>
    </message>
    <message>
        <source>air %1, %2; panel %3; dew point %4</source>
        <translation>air %1, %2&#xa0;; panneau %3&#xa0;; point de rosée %4</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s), each within the limit of %1.</source>
        <translation>
            <numerusform>%n mesure, dans la limite de %1.</numerusform>
            <numerusform>%n mesures, toutes dans la limite de %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) below the limit of %1</source>
        <translation>
            <numerusform>%n mesure sous la limite de %1</numerusform>
            <numerusform>%n mesures sous la limite de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>least %1 at %2: no filling then</source>
        <translation>minimum %1 à %2&#xa0;: pas de mastic alors</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
</context>
<context>
    <name>strandbench::FigureListScreen</name>
    <message>
        <source>gels of a lot against its sheet</source>
        <translation>prises d’un lot comparées à sa fiche</translation>
    </message>
    <message>
        <source>planned and mixed, by product</source>
        <translation>prévu et mélangé, par produit</translation>
    </message>
    <message>
        <source>signed off, not returned, by substrate</source>
        <translation>visées, non renvoyées, par support</translation>
    </message>
    <message>
        <source>planned and actual, by part of the job</source>
        <translation>prévu et réel, par partie du dossier</translation>
    </message>
    <message>
        <source>deviations, the most frequent first</source>
        <translation>écarts, les plus fréquents d’abord</translation>
    </message>
    <message>
        <source>Figures of this bench’s log</source>
        <translation>Chiffres du journal de ce poste</translation>
    </message>
    <message>
        <source>What do you want to know?</source>
        <translation>Que voulez-vous savoir&#xa0;?</translation>
    </message>
</context>
<context>
    <name>strandbench::FigureLotScreen</name>
    <message>
        <source>Which lot? The newest gel first</source>
        <translation>Quel lot ? La prise la plus récente d’abord</translation>
    </message>
    <message>
        <source>In these days no gel was told of a batch whose hardener lot is known.</source>
        <translation>Pendant ces jours, aucune prise n’a été indiquée pour un mélange dont le lot de durcisseur est connu.</translation>
    </message>
    <message numerus="yes">
        <source>%n gel(s), the last on %1</source>
        <translation>
            <numerusform>%n prise, la dernière le %1</numerusform>
            <numerusform>%n prises, la dernière le %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::FigureScreen</name>
    <message>
        <source>Is lot %1 drifting?</source>
        <extracomment>%1 is a lot of hardener</extracomment>
        <translation>Le lot %1 dérive-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>Show the chart</source>
        <translation>Voir le graphique</translation>
    </message>
    <message>
        <source>Show the table</source>
        <translation>Voir le tableau</translation>
    </message>
    <message>
        <source>Moving range</source>
        <translation>Étendue mobile</translation>
    </message>
    <message>
        <source>Single gels</source>
        <translation>Prise par prise</translation>
    </message>
    <message>
        <source>the step from gel to gel</source>
        <translation>saut de prise en prise</translation>
    </message>
    <message>
        <source>with the moving mean</source>
        <translation>avec la moyenne mobile</translation>
    </message>
</context>
<context>
    <name>strandbench::FiguresScreen</name>
    <message>
        <source>%1 is not measured yet.</source>
        <translation>%1&#xa0;: pas encore mesuré.</translation>
    </message>
    <message>
        <source>Tap its figure to key it in.</source>
        <translation>Toucher la valeur pour la saisir.</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Garder cette valeur</translation>
    </message>
    <message>
        <source>%1: take over</source>
        <translation>%1&#xa0;: reprendre</translation>
    </message>
    <message>
        <source>not within what is allowed here</source>
        <translation>hors de ce qui est admis ici</translation>
    </message>
    <message>
        <source>not steady yet</source>
        <translation>pas encore stable</translation>
    </message>
</context>
<context>
    <name>strandbench::FindScreen</name>
    <message>
        <source>Job, panel, person, lot or words of a note</source>
        <translation>Dossier, panneau, personne, lot ou mots d’une note</translation>
    </message>
    <message>
        <source>What is looked for?</source>
        <translation>Que cherche-t-on&#xa0;?</translation>
    </message>
    <message>
        <source>Look for it</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>The code holds a control character.</source>
        <translation>Le code contient un caractère de contrôle.</translation>
    </message>
    <message>
        <source>It is not looked for.</source>
        <translation>Il n’est pas cherché.</translation>
    </message>
</context>
<context>
    <name>strandbench::FireScreen</name>
    <message>
        <source>What can burn here</source>
        <translation>Ce qui peut brûler ici</translation>
    </message>
    <message>
        <source>The safety data sheet, local codes and licensed practice come first.</source>
        <translation>La fiche de données de sécurité, les règles locales et les habilitations passent d’abord.</translation>
    </message>
    <message>
        <source>What lights vapour</source>
        <translation>Ce qui enflamme la vapeur</translation>
    </message>
    <message>
        <source>Sparks of grinder, drill, switch or plug.</source>
        <translation>Étincelles de meuleuse, perceuse, interrupteur ou prise.</translation>
    </message>
    <message>
        <source>Static of dry rags, foil and spray: earth can and panel.</source>
        <translation>Électricité statique de chiffons secs, film, pulvérisation&#xa0;: mettre bidon et panneau à la terre.</translation>
    </message>
    <message>
        <source>Heater, lamp, hot pipe, flame, cigarette.</source>
        <translation>Chauffage, lampe, tuyau chaud, flamme, cigarette.</translation>
    </message>
    <message>
        <source>The vapours are heavier than air: they lie low and creep far.</source>
        <translation>Les vapeurs sont plus lourdes que l’air&#xa0;: elles restent au sol et vont loin.</translation>
    </message>
    <message>
        <source>What heats up by itself</source>
        <translation>Ce qui chauffe tout seul</translation>
    </message>
</context>
<context>
    <name>strandbench::FoundScreen</name>
    <message>
        <source>Looked for: %1</source>
        <translation>Cherché&#xa0;: %1</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Recherche…</translation>
    </message>
    <message>
        <source>Look for something else</source>
        <translation>Chercher autre chose</translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation>Rien trouvé</translation>
    </message>
    <message>
        <source>The newest first: tap one</source>
        <translation>Le plus récent d’abord&#xa0;: toucher</translation>
    </message>
    <message>
        <source>No repair holds all of these words. Fewer letters find more: words are found by their beginning.</source>
        <translation>Aucune réparation n’a tous ces mots. Moins de lettres trouvent plus&#xa0;: le début suffit.</translation>
    </message>
    <message>
        <source>every repair that took of this lot</source>
        <translation>chaque réparation qui en a pris</translation>
    </message>
    <message>
        <source>Older ones</source>
        <translation>Plus anciennes</translation>
    </message>
</context>
<context>
    <name>strandbench::GlossaryScreen</name>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
    <message>
        <source>Words of the trade</source>
        <translation>Mots du métier</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Retour au travail</translation>
    </message>
</context>
<context>
    <name>strandbench::HarmScreen</name>
    <message>
        <source>What can hurt here</source>
        <translation>Ce qui peut blesser ici</translation>
    </message>
    <message>
        <source>The safety data sheet, local codes and licensed practice come first.</source>
        <translation>La fiche de données de sécurité, les règles locales et les habilitations passent d’abord.</translation>
    </message>
    <message>
        <source>Back to the step</source>
        <translation>Retour à l’étape</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>By the safety data sheet of %1</source>
        <extracomment>%1 is a product as the shop calls it</extracomment>
        <translation>D’après la fiche de données de sécurité de %1</translation>
    </message>
    <message>
        <source>In general; the product’s own sheet may say more.</source>
        <translation>En général&#xa0;; la fiche du produit peut en dire plus.</translation>
    </message>
    <message>
        <source>Gloves: %1</source>
        <translation>Gants&#xa0;: %1</translation>
    </message>
    <message>
        <source>Mask: %1</source>
        <translation>Masque&#xa0;: %1</translation>
    </message>
    <message>
        <source>First aid: %1</source>
        <translation>Premiers secours&#xa0;: %1</translation>
    </message>
    <message>
        <source>Waste: %1</source>
        <translation>Déchets&#xa0;: %1</translation>
    </message>
    <message>
        <source>Its sheet states no hazard.</source>
        <translation>Sa fiche n’indique aucun danger.</translation>
    </message>
</context>
<context>
    <name>strandbench::HelpScreen</name>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Retour au travail</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Mots</translation>
    </message>
    <message>
        <source>of the trade</source>
        <translation>du métier</translation>
    </message>
    <message>
        <source>Legend</source>
        <translation>Légende</translation>
    </message>
    <message>
        <source>hatches and signs</source>
        <translation>hachures et signes</translation>
    </message>
    <message>
        <source>Quick card</source>
        <translation>Carte mémo</translation>
    </message>
    <message>
        <source>one page, to print</source>
        <translation>une page, à imprimer</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
</context>
<context>
    <name>strandbench::HomeScreen</name>
    <message>
        <source>Take in a panel</source>
        <translation>Nouveau panneau</translation>
    </message>
    <message>
        <source>job number and panel</source>
        <translation>dossier et panneau</translation>
    </message>
    <message>
        <source>At the bench</source>
        <translation>Au poste</translation>
    </message>
    <message>
        <source>nobody yet: tap</source>
        <translation>personne&#xa0;: toucher</translation>
    </message>
    <message>
        <source>More jobs</source>
        <translation>Autres dossiers</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Réglages poste</translation>
    </message>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n en tout</numerusform>
            <numerusform>%n en tout</numerusform>
        </translation>
    </message>
    <message>
        <source>Today’s work</source>
        <translation>Travail du jour</translation>
    </message>
    <message>
        <source>! backup overdue</source>
        <translation>! sauvegarde en retard</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation>S’exercer</translation>
    </message>
    <message>
        <source>on a practice panel</source>
        <translation>sur un panneau d’exercice</translation>
    </message>
    <message>
        <source>No repair is open. Take in a panel: the program asks what there is, plans, and keeps time and record.</source>
        <translation>Aucune réparation n’est ouverte. Prendre un panneau en charge : le programme demande, planifie, tient le temps et le journal.</translation>
    </message>
</context>
<context>
    <name>strandbench::LegendScreen</name>
    <message>
        <source>crossed hatch</source>
        <translation>hachures croisées</translation>
    </message>
    <message>
        <source>short flecks</source>
        <translation>mouchetures</translation>
    </message>
    <message>
        <source>close slanted hatch</source>
        <translation>hachures obliques serrées</translation>
    </message>
    <message>
        <source>as steel, with a pale skin</source>
        <translation>comme l’acier, à peau claire</translation>
    </message>
    <message>
        <source>pale, rows of dashes</source>
        <translation>clair, rangées de tirets</translation>
    </message>
    <message>
        <source>pale, rows of dots</source>
        <translation>clair, rangées de points</translation>
    </message>
    <message>
        <source>Fibre filler</source>
        <translation>Mastic fibre</translation>
    </message>
    <message>
        <source>short strokes</source>
        <translation>traits courts</translation>
    </message>
    <message>
        <source>The next lift</source>
        <translation>La passe suivante</translation>
    </message>
    <message>
        <source>fewer strokes, paler</source>
        <translation>moins de traits, plus clair</translation>
    </message>
    <message>
        <source>Not laid yet</source>
        <translation>Pas encore posée</translation>
    </message>
    <message>
        <source>dashed outline</source>
        <translation>contour en tirets</translation>
    </message>
    <message>
        <source>Finishing filler</source>
        <translation>Mastic de finition</translation>
    </message>
    <message>
        <source>pale, without hatch</source>
        <translation>clair, sans hachures</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>the bead on the board</source>
        <translation>le cordon sur la palette</translation>
    </message>
    <message>
        <source>Adhesive</source>
        <translation>Colle</translation>
    </message>
    <message>
        <source>upright strokes</source>
        <translation>traits verticaux</translation>
    </message>
    <message>
        <source>Weld</source>
        <translation>Soudure</translation>
    </message>
    <message>
        <source>grey, without hatch</source>
        <translation>gris, sans hachures</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Peinture</translation>
    </message>
    <message>
        <source>blue, without hatch</source>
        <translation>bleu, sans hachures</translation>
    </message>
    <message>
        <source>Tape of a dam</source>
        <translation>Adhésif d’un barrage</translation>
    </message>
    <message>
        <source>yellow, without hatch</source>
        <translation>jaune, sans hachures</translation>
    </message>
    <message>
        <source>Octagon: stop</source>
        <translation>Octogone&#xa0;: stop</translation>
    </message>
    <message>
        <source>Do not go on here.</source>
        <translation>Ne pas continuer ici.</translation>
    </message>
    <message>
        <source>Triangle: caution</source>
        <translation>Triangle&#xa0;: attention</translation>
    </message>
    <message>
        <source>It can hurt, or spoil the work.</source>
        <translation>Cela peut blesser ou gâter le travail.</translation>
    </message>
    <message>
        <source>Blue key: do</source>
        <translation>Touche bleue&#xa0;: faire</translation>
    </message>
    <message>
        <source>The way on; it records what was done.</source>
        <translation>La suite&#xa0;; elle note ce qui est fait.</translation>
    </message>
    <message>
        <source>Green key: go</source>
        <translation>Touche verte : avancer</translation>
    </message>
    <message>
        <source>The way on where all that is asked is there.</source>
        <translation>La suite quand tout ce qui est demandé est là.</translation>
    </message>
    <message>
        <source>Disc with a tick: done</source>
        <translation>Disque coché&#xa0;: fait</translation>
    </message>
    <message>
        <source>It was told and is in the log.</source>
        <translation>C’est dit et dans le journal.</translation>
    </message>
    <message>
        <source>A tap on a section leads here</source>
        <translation>Toucher une coupe mène ici</translation>
    </message>
    <message>
        <source>Hatches and signs</source>
        <translation>Hachures et signes</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Retour au travail</translation>
    </message>
    <message>
        <source>dark, in squares</source>
        <translation>foncé, à carreaux</translation>
    </message>
</context>
<context>
    <name>strandbench::LotKeys</name>
    <message>
        <source>Clear</source>
        <translation>Effacer</translation>
    </message>
</context>
<context>
    <name>strandbench::LotListScreen</name>
    <message>
        <source>Hardener lots of this bench</source>
        <translation>Lots de durcisseur de ce poste</translation>
    </message>
    <message>
        <source>Tap a lot to see what it taught</source>
        <translation>Toucher un lot&#xa0;: ce qu’il a appris</translation>
    </message>
    <message>
        <source>No batch yet whose hardener lot was told. It is told at the mix.</source>
        <translation>Encore aucun mélange avec lot de durcisseur indiqué. On l’indique au mélange.</translation>
    </message>
    <message>
        <source>its sheet is not loaded</source>
        <translation>fiche non enregistrée</translation>
    </message>
</context>
<context>
    <name>strandbench::LotPageScreen</name>
    <message>
        <source>What this lot taught</source>
        <translation>Ce que ce lot a appris</translation>
    </message>
    <message>
        <source>To the test pat</source>
        <translation>À la galette d’essai</translation>
    </message>
    <message>
        <source>Make a test pat</source>
        <translation>Faire une galette d’essai</translation>
    </message>
    <message>
        <source>The sheet of this product is not loaded.</source>
        <translation>La fiche de ce produit n’est pas enregistrée.</translation>
    </message>
    <message>
        <source>forgotten</source>
        <translation>oublié</translation>
    </message>
    <message>
        <source>Nothing was mixed of this lot yet.</source>
        <translation>Rien n’a encore été mélangé de ce lot.</translation>
    </message>
    <message>
        <source>The next batch, most likely:</source>
        <translation>Le prochain mélange, le plus probable&#xa0;:</translation>
    </message>
    <message>
        <source>%1 of batches: %2</source>
        <translation>%1 des mélanges&#xa0;: %2</translation>
    </message>
    <message>
        <source>Forgotten on %1 by %2: %3</source>
        <translation>Oublié le %1 par %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>nobody told</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Oublier ceux-ci</translation>
    </message>
    <message>
        <source>supervisor: hold 1 s</source>
        <translation>chef d’atelier : tenir 1 s</translation>
    </message>
    <message>
        <source>Calibrate its bead</source>
        <translation>Étalonner son cordon</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>by an earlier version of the sheet: it does not count</source>
        <translation>par une version antérieure de la fiche&#xa0;: ne compte pas</translation>
    </message>
</context>
<context>
    <name>strandbench::LotScreen</name>
    <message>
        <source>Which product is in your hand?</source>
        <translation>Quel produit en main&#xa0;?</translation>
    </message>
    <message>
        <source>Which lot of filler is open?</source>
        <translation>Quel lot de mastic est ouvert&#xa0;?</translation>
    </message>
    <message>
        <source>Which lot of hardener is open?</source>
        <translation>Quel lot de durcisseur est ouvert&#xa0;?</translation>
    </message>
    <message>
        <source>These are in hand</source>
        <translation>Ceux-ci sont en main</translation>
    </message>
    <message>
        <source>Key in or scan the lot of filler</source>
        <translation>Saisir ou scanner le lot de mastic</translation>
    </message>
    <message>
        <source>Key in or scan the lot of hardener</source>
        <translation>Saisir ou scanner le lot de durcisseur</translation>
    </message>
    <message>
        <source>Take this lot</source>
        <translation>Prendre ce lot</translation>
    </message>
    <message>
        <source>Scanned: lot %1. What is it?</source>
        <translation>Scanné : lot %1. De quoi ?</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produit</translation>
    </message>
    <message>
        <source>its sheet is not loaded</source>
        <translation>fiche non enregistrée</translation>
    </message>
    <message>
        <source>Lot of filler</source>
        <translation>Lot de mastic</translation>
    </message>
    <message>
        <source>Lot of hardener</source>
        <translation>Lot de durcisseur</translation>
    </message>
    <message>
        <source>planned with</source>
        <translation>prévu au plan</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Another lot</source>
        <translation>Autre lot</translation>
    </message>
    <message>
        <source>Remove lot %1</source>
        <translation>Ôter le lot %1</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>tenir 1&#xa0;s</translation>
    </message>
    <message>
        <source>Filler</source>
        <translation>Mastic</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Durcisseur</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>fini</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>reste %1</translation>
    </message>
</context>
<context>
    <name>strandbench::LotTraceScreen</name>
    <message>
        <source>Looking …</source>
        <translation>Recherche…</translation>
    </message>
    <message>
        <source>Recall list as files</source>
        <translation>Liste de rappel en fichiers</translation>
    </message>
    <message>
        <source>Nothing was mixed of this lot</source>
        <extracomment>%1 is &quot;3 batches&quot;</extracomment>
        <translation>Rien n’a été mélangé de ce lot</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n repair(s)</source>
        <translation>
            <numerusform>%1 dans %n réparation</numerusform>
            <numerusform>%1 dans %n réparations</numerusform>
        </translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>The recall list is being written …</source>
        <translation>Écriture de la liste de rappel…</translation>
    </message>
    <message>
        <source>Cancelled: nothing was written.</source>
        <translation>Annulé&#xa0;: rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Written as CSV and PDF: %1</source>
        <extracomment>%1 is a file’s name without its ending</extracomment>
        <translation>Écrit en CSV et PDF&#xa0;: %1</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>Pas écrit&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::MarkScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panneau d’exercice</translation>
    </message>
    <message>
        <source>Back to the marks</source>
        <translation>Retour à la correction</translation>
    </message>
    <message>
        <source>You: %1</source>
        <extracomment>what the apprentice decided</extracomment>
        <translation>Réponse&#xa0;: %1</translation>
    </message>
    <message>
        <source>Right: %1</source>
        <translation>Juste&#xa0;: %1</translation>
    </message>
    <message>
        <source>It was not reached.</source>
        <translation>Pas atteint.</translation>
    </message>
    <message>
        <source>hottest</source>
        <translation>maximum</translation>
    </message>
    <message>
        <source>face</source>
        <translation>surface</translation>
    </message>
    <message>
        <source>cured</source>
        <translation>durci</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>sands</source>
        <translation>ponçage</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>now</source>
        <translation>maintenant</translation>
    </message>
</context>
<context>
    <name>strandbench::MarksScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panneau d’exercice</translation>
    </message>
    <message>
        <source>Working out what it comes to …</source>
        <translation>Calcul de ce que cela donne…</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Terminé</translation>
    </message>
    <message>
        <source>Replay</source>
        <translation>Revoir</translation>
    </message>
    <message>
        <source>beside the model answer</source>
        <translation>à côté du corrigé</translation>
    </message>
    <message>
        <source>right</source>
        <translation>juste</translation>
    </message>
    <message>
        <source>not reached</source>
        <translation>pas atteint</translation>
    </message>
</context>
<context>
    <name>strandbench::MixByEyeScreen</name>
    <message>
        <source>Lay filler and hardener on the board</source>
        <translation>Poser mastic et durcisseur sur la palette</translation>
    </message>
    <message>
        <source>Hardener in — start</source>
        <translation>Durcisseur mis&#xa0;: départ</translation>
    </message>
    <message>
        <source>Puddle and bead at true size</source>
        <translation>Galette et cordon, taille réelle</translation>
    </message>
    <message>
        <source>Puddle smaller</source>
        <translation>Réduire galette</translation>
    </message>
    <message>
        <source>Puddle larger</source>
        <translation>Élargir galette</translation>
    </message>
    <message>
        <source>Bead shorter</source>
        <translation>Écourter cordon</translation>
    </message>
    <message>
        <source>Bead longer</source>
        <translation>Allonger cordon</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Taille réelle</translation>
    </message>
    <message>
        <source>not true size</source>
        <translation>taille non réelle</translation>
    </message>
</context>
<context>
    <name>strandbench::MixScreen</name>
    <message>
        <source>Knead both, then weigh these two</source>
        <translation>Malaxer les deux, puis les peser</translation>
    </message>
    <message>
        <source>Knead both, then lay this puddle and bead</source>
        <translation>Malaxer les deux, puis poser galette et cordon</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Durcisseur mis : départ</translation>
    </message>
    <message>
        <source>Puddle and bead, drawn to size</source>
        <translation>Galette et cordon, taille réelle</translation>
    </message>
    <message>
        <source>Hold the board beside the glass. Straight bead, puddle %1 high.</source>
        <translation>Palette près de l’écran. Cordon droit, galette haute de %1.</translation>
    </message>
    <message>
        <source>Weigh: filler + hardener</source>
        <translation>Peser&#xa0;: mastic + durcisseur</translation>
    </message>
    <message>
        <source>Under %1: bead too coarse</source>
        <translation>Sous %1 : cordon imprécis</translation>
    </message>
    <message>
        <source>Puddle across</source>
        <translation>Largeur galette</translation>
    </message>
    <message>
        <source>Hardener bead (%1)</source>
        <translation>Cordon (%1)</translation>
    </message>
    <message>
        <source>or weigh</source>
        <translation>ou peser</translation>
    </message>
    <message>
        <source>board sets in about %1</source>
        <translation>prend en %1 environ</translation>
    </message>
    <message>
        <source>More or less hardener?</source>
        <translation>Plus ou moins de durcisseur ?</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>%1 · lot not told: tap</source>
        <translation>%1 · dire le lot</translation>
    </message>
    <message>
        <source>%1 · lot %2 · hardener %3</source>
        <translation>%1 · lot %2 · durcisseur %3</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>not the product planned with</source>
        <translation>pas le produit du plan</translation>
    </message>
    <message>
        <source>Hold it back</source>
        <translation>Différer</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Remesurer</translation>
    </message>
    <message>
        <source>Plan again as read</source>
        <translation>Replanifier ainsi</translation>
    </message>
    <message>
        <source>Hardener in anyway</source>
        <translation>Durcisseur quand même</translation>
    </message>
    <message>
        <source>go to job %1</source>
        <translation>au dossier %1</translation>
    </message>
    <message>
        <source>Hardener bead</source>
        <translation>Cordon durcisseur</translation>
    </message>
    <message>
        <source>%1 · lot? · hardener %2</source>
        <extracomment>%1 is a product, %2 a lot of hardener; the filler&apos;s lot is asked for: a key of 29 mm</extracomment>
        <translation>%1 · lot&#xa0;? · durcisseur %2</translation>
    </message>
    <message>
        <source>Scale: %1</source>
        <translation>Balance&#xa0;: %1</translation>
    </message>
    <message>
        <source>steady: take as filler</source>
        <translation>stable&#xa0;: mastic</translation>
    </message>
    <message>
        <source>not steady yet</source>
        <translation>pas encore stable</translation>
    </message>
    <message>
        <source>Weighed?</source>
        <translation>Pesé&#xa0;?</translation>
    </message>
    <message>
        <source>nothing from the scale</source>
        <translation>rien de la balance</translation>
    </message>
</context>
<context>
    <name>strandbench::MixesScreen</name>
    <message>
        <source>Every mix that runs: the most urgent first</source>
        <translation>Tous les mélanges en cours&#xa0;: le plus urgent d’abord</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message numerus="yes">
        <source>%n in all</source>
        <translation>
            <numerusform>%n en tout</numerusform>
            <numerusform>%n en tout</numerusform>
        </translation>
    </message>
    <message>
        <source>No mix runs</source>
        <translation>Aucun mélange</translation>
    </message>
</context>
<context>
    <name>strandbench::PagedKeys</name>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PagedRows</name>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a page of a list: &quot;1 of 3&quot;</extracomment>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PanelLookScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panneau d’exercice</translation>
    </message>
    <message>
        <source>Look at it, and try what you need</source>
        <translation>Le regarder, essayer le nécessaire</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 is what was tried, %2 what it finds: &quot;Magnet: no pull.&quot;</extracomment>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>strandbench::PaperScreen</name>
    <message>
        <source>US Letter</source>
        <translation>Lettre US</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimer</translation>
    </message>
    <message>
        <source>The sheet could not be written.</source>
        <translation>La feuille n’a pas pu être écrite.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <extracomment>%1 is the path of a file</extracomment>
        <translation>Écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>The file beside the sheet could not be written.</source>
        <translation>Le fichier à côté de la feuille n’a pas pu être écrit.</translation>
    </message>
    <message>
        <source>Being written …</source>
        <translation>Écriture en cours…</translation>
    </message>
    <message>
        <source>Cancelled: nothing was written.</source>
        <translation>Annulé&#xa0;: rien n’a été écrit.</translation>
    </message>
    <message>
        <source>No printer is set up on this machine.</source>
        <translation>Aucune imprimante sur cette machine.</translation>
    </message>
    <message>
        <source>Write the sheet to a stick, and print it elsewhere.</source>
        <translation>Écrire la feuille sur une clé USB et l’imprimer ailleurs.</translation>
    </message>
    <message>
        <source>Being printed …</source>
        <translation>Impression en cours…</translation>
    </message>
    <message>
        <source>Cancelled: nothing was printed.</source>
        <translation>Annulé&#xa0;: rien n’a été imprimé.</translation>
    </message>
    <message>
        <source>The printer does not take the sheet.</source>
        <translation>L’imprimante n’accepte pas la feuille.</translation>
    </message>
    <message>
        <source>Look at the printer, and try again.</source>
        <translation>Regarder l’imprimante et réessayer.</translation>
    </message>
    <message>
        <source>Given to the printer</source>
        <extracomment>%1 is the name of a printer</extracomment>
        <translation>Envoyé à l’imprimante</translation>
    </message>
    <message>
        <source>Given to the printer: %1</source>
        <translation>Envoyé à l’imprimante&#xa0;: %1</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
</context>
<context>
    <name>strandbench::PatScreen</name>
    <message>
        <source>Watch the pat: tap when it pulls and will not smear</source>
        <translation>Surveiller la galette : signaler quand elle tire</translation>
    </message>
    <message>
        <source>Knead both, then lay this puddle and bead</source>
        <translation>Malaxer les deux, puis poser galette et cordon</translation>
    </message>
    <message>
        <source>Puddle and bead, drawn to size</source>
        <translation>Galette et cordon, taille réelle</translation>
    </message>
    <message>
        <source>A pat on the board tells how fast this lot gels before a panel hangs on it.</source>
        <translation>Une galette sur la palette dit à quelle vitesse ce lot prend, avant d’engager un panneau.</translation>
    </message>
    <message>
        <source>Reckoned for air of %1, read %2 ago.</source>
        <translation>Calculé pour un air de %1, mesuré il y a %2.</translation>
    </message>
    <message>
        <source>No air was read yet: read it at a repair first.</source>
        <translation>Air pas encore mesuré&#xa0;: le mesurer d’abord à une réparation.</translation>
    </message>
    <message>
        <source>Hardener in: start</source>
        <translation>Durcisseur mis : départ</translation>
    </message>
    <message>
        <source>Expected between %1 and %2; by the sheet after %3.</source>
        <translation>Attendu entre %1 et %2&#xa0;; selon la fiche après %3.</translation>
    </message>
    <message>
        <source>It was thrown away: mix a new one</source>
        <translation>Jetée&#xa0;: en mélanger une autre</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>tenir 1&#xa0;s</translation>
    </message>
    <message>
        <source>clock runs on</source>
        <translation>chrono en cours</translation>
    </message>
    <message>
        <source>It has gelled</source>
        <translation>Il a pris</translation>
    </message>
    <message>
        <source>since hardener in</source>
        <translation>depuis le durcisseur</translation>
    </message>
</context>
<context>
    <name>strandbench::PhotoPickScreen</name>
    <message>
        <source>Choose the photo: %1</source>
        <translation>Choisir la photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>Newer</source>
        <extracomment>short: keys of 20 mm, to the pictures taken later and earlier</extracomment>
        <translation>Récentes</translation>
    </message>
    <message>
        <source>Older</source>
        <translation>Anciennes</translation>
    </message>
    <message>
        <source>Another folder</source>
        <translation>Autre répertoire</translation>
    </message>
    <message>
        <source>Picture of %1, %2</source>
        <extracomment>%1 is when, %2 the file&apos;s name</extracomment>
        <translation>Image %1, %2</translation>
    </message>
    <message>
        <source>No pictures in this folder yet. New ones show by themselves.</source>
        <translation>Pas encore d’image dans ce répertoire. Les nouvelles s’affichent seules.</translation>
    </message>
    <message>
        <source>This folder cannot be read. Choose another one.</source>
        <translation>Ce répertoire est illisible. En choisir un autre.</translation>
    </message>
    <message>
        <source>%1 cannot be read. %2</source>
        <translation>%1 illisible. %2</translation>
    </message>
    <message>
        <source>%1 is larger than %2 MB.</source>
        <translation>%1 dépasse %2&#xa0;Mo.</translation>
    </message>
    <message>
        <source>%1 is a %2 file. Only JPEG and PNG are kept.</source>
        <translation>%1 est un fichier %2. Seuls JPEG et PNG sont gardés.</translation>
    </message>
    <message>
        <source>%1 is no whole picture. Take it again, or wait until it is written.</source>
        <translation>%1 n’est pas une image entière. La reprendre, ou attendre son écriture.</translation>
    </message>
    <message>
        <source>no picture to be seen</source>
        <translation>aucune image visible</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lecture</translation>
    </message>
    <message>
        <source>Camera</source>
        <extracomment>short: a key of 20 mm, to the live picture of a camera</extracomment>
        <translation>Caméra</translation>
    </message>
</context>
<context>
    <name>strandbench::PickScreen</name>
    <message>
        <source>number %1</source>
        <translation>numéro %1</translation>
    </message>
</context>
<context>
    <name>strandbench::PinScreen</name>
    <message numerus="yes">
        <source>%n digit(s)</source>
        <translation>
            <numerusform>%n chiffre</numerusform>
            <numerusform>%n chiffres</numerusform>
        </translation>
    </message>
    <message>
        <source>The PIN is looked at</source>
        <translation>Vérification du code</translation>
    </message>
    <message>
        <source>No PIN is set on this bench.</source>
        <translation>Aucun code n’est fixé sur ce poste.</translation>
    </message>
    <message>
        <source>Set it: bench set-up, people.</source>
        <translation>Le fixer : réglages poste, personnes.</translation>
    </message>
    <message>
        <source>The try cannot be counted, so it was not looked at.</source>
        <translation>L’essai ne peut être compté : il n’a pas été vérifié.</translation>
    </message>
    <message>
        <source>Check the disk and the PIN’s file.</source>
        <translation>Vérifier le disque et le fichier du code.</translation>
    </message>
    <message>
        <source>The wait was not over: it was not looked at.</source>
        <translation>L’attente n’était pas finie : il n’a pas été vérifié.</translation>
    </message>
    <message>
        <source>Key it in again.</source>
        <translation>Le ressaisir.</translation>
    </message>
    <message>
        <source>That is not the PIN.</source>
        <translation>Ce n’est pas le code.</translation>
    </message>
    <message>
        <source>The try is in the log.</source>
        <translation>L’essai est dans le journal.</translation>
    </message>
    <message>
        <source>Wrong PINs were given. The next in %1.</source>
        <translation>Des codes faux ont été donnés. Le prochain dans %1.</translation>
    </message>
</context>
<context>
    <name>strandbench::PlanScreen</name>
    <message>
        <source>%1, %2: fill both faces</source>
        <translation>%1, %2 : mastiquer les deux faces</translation>
    </message>
    <message>
        <source>%1, %2: fill it</source>
        <translation>%1, %2 : mastiquer</translation>
    </message>
    <message>
        <source>To the present step</source>
        <translation>À l’étape en cours</translation>
    </message>
    <message>
        <source>Right: prepare it</source>
        <translation>Correct&#xa0;: préparer</translation>
    </message>
    <message>
        <source>Section of this repair, to scale</source>
        <translation>Coupe de la réparation, à l’échelle</translation>
    </message>
    <message>
        <source>Mix of fibre and finishing filler</source>
        <translation>Mélange fibre et finition</translation>
    </message>
    <message>
        <source>%1 + %2 in %3</source>
        <translation>%1 + %2 en %3</translation>
    </message>
    <message>
        <source>Ready for primer</source>
        <translation>Prêt pour l’apprêt</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>environ %1</translation>
    </message>
    <message>
        <source>why this one?</source>
        <translation>pourquoi lui&#xa0;?</translation>
    </message>
    <message>
        <source>Hottest as it cures %1, limit %2</source>
        <translation>Maximum %1, limite %2</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Réponses</translation>
    </message>
    <message>
        <source>look, or change one</source>
        <translation>voir ou changer</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Stock</translation>
    </message>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n à voir</numerusform>
            <numerusform>! %n à voir</numerusform>
        </translation>
    </message>
    <message>
        <source>enough</source>
        <translation>suffisant</translation>
    </message>
</context>
<context>
    <name>strandbench::PracticeClockScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panneau d’exercice</translation>
    </message>
    <message>
        <source>Press it in, build it up, clear the edges</source>
        <translation>Serrer, remplir, dégager les bords</translation>
    </message>
    <message>
        <source>Hands off until it sands</source>
        <translation>Ne pas toucher avant ponçage</translation>
    </message>
    <message>
        <source>Edges are clear</source>
        <translation>Bords dégagés</translation>
    </message>
    <message>
        <source>Sand it now</source>
        <translation>Poncer</translation>
    </message>
    <message>
        <source>since the hardener went in</source>
        <translation>depuis le durcisseur</translation>
    </message>
    <message>
        <source>faster, or as in the shop</source>
        <translation>plus vite, ou comme à l’atelier</translation>
    </message>
    <message>
        <source>Nail and paper</source>
        <translation>Ongle et papier</translation>
    </message>
    <message>
        <source>try whether it sands</source>
        <translation>essayer s’il se ponce</translation>
    </message>
    <message>
        <source>Another batch</source>
        <translation>Autre mélange</translation>
    </message>
    <message>
        <source>for the same lift</source>
        <translation>pour la même passe</translation>
    </message>
    <message>
        <source>Clock: %1 times</source>
        <extracomment>how many times as fast as the shop&apos;s clock</extracomment>
        <translation>Chrono : %1 fois</translation>
    </message>
    <message>
        <source>It spreads easily.</source>
        <translation>Il s’étale facilement.</translation>
    </message>
    <message>
        <source>It drags behind the spreader.</source>
        <translation>Il traîne derrière la spatule.</translation>
    </message>
    <message>
        <source>What is left on the board has set: it tears.</source>
        <translation>Le reste sur la palette a pris&#xa0;: il s’arrache.</translation>
    </message>
    <message>
        <source>Try again in a moment.</source>
        <translation>Réessayer dans un instant.</translation>
    </message>
    <message>
        <source>It is wet: it smears.</source>
        <translation>Il est frais&#xa0;: il bave.</translation>
    </message>
    <message>
        <source>The nail leaves a mark, the paper clogs.</source>
        <translation>L’ongle marque, le papier s’encrasse.</translation>
    </message>
    <message>
        <source>The nail leaves no mark, the paper powders it.</source>
        <translation>L’ongle ne marque pas, le papier poudre.</translation>
    </message>
    <message>
        <source>Hard as stone: the paper hardly bites.</source>
        <translation>Dur comme pierre&#xa0;: le papier mord à peine.</translation>
    </message>
</context>
<context>
    <name>strandbench::PracticeFlow</name>
    <message>
        <source>This line of the practice record is left out; it stays in its file.</source>
        <translation>Cette ligne du journal d’exercice est omise&#xa0;; elle reste dans son fichier.</translation>
    </message>
    <message>
        <source>To the question</source>
        <translation>Vers la question</translation>
    </message>
    <message>
        <source>The practice record was not written: %1</source>
        <translation>Journal d’exercice non écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>The marks hold until the program is closed.</source>
        <translation>La correction vaut jusqu’à la fermeture du programme.</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductEditScreen</name>
    <message>
        <source>Product sheets</source>
        <translation>Fiches produit</translation>
    </message>
    <message>
        <source>a new sheet</source>
        <translation>une nouvelle fiche</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>ne va pas</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supposé</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>the model’s own</source>
        <translation>du modèle</translation>
    </message>
    <message>
        <source>What it comes to</source>
        <translation>Ce que cela donne</translation>
    </message>
    <message>
        <source>next page</source>
        <translation>page suivante</translation>
    </message>
    <message>
        <source>What is assumed is common for such fillers, without a source. Put in what your data sheet says.</source>
        <translation>Ce qui est supposé est courant pour ces mastics, sans source. Mettre ce que dit la fiche.</translation>
    </message>
    <message>
        <source>What kind of filler is it?</source>
        <translation>Quel type de mastic est-ce&#xa0;?</translation>
    </message>
    <message>
        <source>Still missing or wrong: %1</source>
        <translation>Encore manquant ou faux : %1</translation>
    </message>
    <message>
        <source>What the engine makes of this sheet</source>
        <translation>Ce que donne cette fiche</translation>
    </message>
    <message>
        <source>Keep this sheet</source>
        <translation>Garder cette fiche</translation>
    </message>
    <message>
        <source>asks for the supervisor’s PIN</source>
        <translation>demande le code du chef</translation>
    </message>
    <message>
        <source>Allowed: %1 to %2</source>
        <extracomment>a range: &quot;0.3 g/ml to 4 g/ml&quot;</extracomment>
        <translation>Permis&#xa0;: %1 à %2</translation>
    </message>
    <message>
        <source>below 0: −</source>
        <translation>sous 0&#xa0;: −</translation>
    </message>
    <message>
        <source>Take it, or leave it empty</source>
        <translation>Garder, ou laisser vide</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Garder cette valeur</translation>
    </message>
    <message>
        <source>Write the product’s name</source>
        <translation>Écrire le nom du produit</translation>
    </message>
    <message>
        <source>Take this name</source>
        <translation>Garder ce nom</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductOutlook</name>
    <message>
        <source>One moment: the engine works out what this sheet means …</source>
        <translation>Un instant&#xa0;: on calcule ce que donne cette fiche…</translation>
    </message>
    <message>
        <source>at</source>
        <translation>à</translation>
    </message>
    <message>
        <source>gels after</source>
        <translation>prend après</translation>
    </message>
    <message>
        <source>sands after</source>
        <translation>se ponce après</translation>
    </message>
    <message>
        <source>greatest lift</source>
        <translation>passe maximale</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <extracomment>a lift: &quot;20 mm or more&quot;</extracomment>
        <translation>%1 ou plus</translation>
    </message>
    <message>
        <source>Reckoned on the sheet’s own test pieces, its peak below %1. The sheet allows %2 in one go; the lower of the two holds.</source>
        <translation>Calculé sur les éprouvettes de la fiche, maximum sous %1. La fiche permet %2 d’un coup&#xa0;; le plus faible vaut.</translation>
    </message>
</context>
<context>
    <name>strandbench::ProductPageScreen</name>
    <message>
        <source>Product sheets</source>
        <translation>Fiches produit</translation>
    </message>
    <message>
        <source>What the engine makes of this sheet</source>
        <translation>Ce que donne cette fiche</translation>
    </message>
    <message>
        <source>Change this sheet</source>
        <translation>Changer cette fiche</translation>
    </message>
    <message>
        <source>%1 min (%2 to %3)</source>
        <extracomment>a stated time with its range: &quot;5 min (4 to 6)&quot;</extracomment>
        <translation>%1 min (%2 à %3)</translation>
    </message>
    <message>
        <source>It states, at %1: working time %2, sands after %3.</source>
        <translation>Elle dit, à %1&#xa0;: temps de travail %2, se ponce après %3.</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <extracomment>a version of a sheet: %1 when, %2 who</extracomment>
        <translation>%1 par %2</translation>
    </message>
    <message>
        <source>nobody told</source>
        <translation>non indiqué</translation>
    </message>
    <message numerus="yes">
        <source>and %n earlier</source>
        <translation>
            <numerusform>et %n antérieure</numerusform>
            <numerusform>et %n antérieures</numerusform>
        </translation>
    </message>
    <message>
        <source>Demo sheet: invented values. Type in the sheet of the tub in your hand.</source>
        <translation>Fiche de démo : valeurs inventées. Saisir la fiche du pot en main.</translation>
    </message>
    <message>
        <source>Versions:</source>
        <translation>Versions&#xa0;:</translation>
    </message>
    <message>
        <source>Laid aside. Versions:</source>
        <translation>Écartée. Versions&#xa0;:</translation>
    </message>
    <message>
        <source>Write to a folder</source>
        <translation>Écrire dans un répertoire</translation>
    </message>
    <message>
        <source>Lay aside</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>tenir 1&#xa0;s</translation>
    </message>
</context>
<context>
    <name>strandbench::QuickCardScreen</name>
    <message>
        <source>Choose where the quick card goes</source>
        <translation>Choisir où va la carte mémo</translation>
    </message>
</context>
<context>
    <name>strandbench::ReadingButton</name>
    <message>
        <source>Air: %1</source>
        <translation>Air&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::RecordScreen</name>
    <message>
        <source>See what happened</source>
        <translation>Voir l’historique</translation>
    </message>
    <message>
        <source>Job sheet as PDF</source>
        <translation>Feuille en PDF</translation>
    </message>
    <message>
        <source>This record cannot be read.</source>
        <translation>Cet historique est illisible.</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>chef d’atelier</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Chronologie</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Lots</translation>
    </message>
    <message>
        <source>Signed off</source>
        <translation>Visé</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Renvoyé</translation>
    </message>
    <message>
        <source>Sign off, return</source>
        <translation>Viser, renvoyer</translation>
    </message>
</context>
<context>
    <name>strandbench::RefusalScreen</name>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Assess again</source>
        <translation>Réévaluer</translation>
    </message>
    <message>
        <source>hold 1 s</source>
        <translation>tenir 1&#xa0;s</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n autre</numerusform>
            <numerusform>et %n autres</numerusform>
        </translation>
    </message>
    <message>
        <source>Also: %1</source>
        <translation>Aussi&#xa0;: %1</translation>
    </message>
    <message>
        <source>What to do instead</source>
        <translation>Que faire à la place</translation>
    </message>
    <message>
        <source>Override</source>
        <translation>Passer outre</translation>
    </message>
    <message>
        <source>supervisor: hold 1 s</source>
        <translation>chef d’atelier : tenir 1 s</translation>
    </message>
    <message>
        <source>There is nothing to plan here, whoever decides.</source>
        <translation>Il n’y a rien à prévoir ici, quel que soit celui qui décide.</translation>
    </message>
</context>
<context>
    <name>strandbench::ReorderScreen</name>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Stock de mastic et de durcisseur</translation>
    </message>
    <message>
        <source>Reorder list: tap a product to set its level</source>
        <translation>À commander&#xa0;: toucher un produit pour son seuil</translation>
    </message>
    <message>
        <source>Back to the stock</source>
        <translation>Retour au stock</translation>
    </message>
    <message>
        <source>reorder: %1 left, level %2</source>
        <extracomment>%1 and %2 are masses</extracomment>
        <translation>commander&#xa0;: reste %1, seuil %2</translation>
    </message>
    <message>
        <source>%1 left, level %2</source>
        <translation>reste %1, seuil %2</translation>
    </message>
    <message>
        <source>%1 left, never reordered</source>
        <translation>reste %1, jamais commandé</translation>
    </message>
</context>
<context>
    <name>strandbench::RepairLotsScreen</name>
    <message>
        <source>Lots that went into it</source>
        <translation>Lots qui y sont entrés</translation>
    </message>
    <message>
        <source>No lot was told</source>
        <translation>Aucun lot indiqué</translation>
    </message>
    <message>
        <source>every repair of this lot</source>
        <translation>toutes les réparations de ce lot</translation>
    </message>
</context>
<context>
    <name>strandbench::RepairsScreen</name>
    <message>
        <source>Stop reading</source>
        <translation>Arrêter la lecture</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>up to today; tap: %n day(s)</source>
        <translation>
            <numerusform>jusqu’à aujourd’hui&#xa0;; toucher&#xa0;: %n jour</numerusform>
            <numerusform>jusqu’à aujourd’hui&#xa0;; toucher&#xa0;: %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>Repairs worked on from %1 to %2</source>
        <extracomment>%1 and %2 are days</extracomment>
        <translation>Réparations travaillées du %1 au %2</translation>
    </message>
    <message numerus="yes">
        <source>Reading the records: %1 of %n repair(s)</source>
        <translation>
            <numerusform>Lecture du journal&#xa0;: %1 sur %n réparation</numerusform>
            <numerusform>Lecture du journal&#xa0;: %1 sur %n réparations</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading the records …</source>
        <translation>Lecture du journal…</translation>
    </message>
</context>
<context>
    <name>strandbench::ReplanScreen</name>
    <message>
        <source>none</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>An answer changed: this is the plan now</source>
        <translation>Réponse changée&#xa0;: voici le plan</translation>
    </message>
    <message>
        <source>Right: go on with it</source>
        <translation>Correct&#xa0;: continuer</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <extracomment>what it was, and what it is now</extracomment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>No figure changes.</source>
        <translation>Aucune valeur ne change.</translation>
    </message>
    <message>
        <source>Preparing to do, or to do again</source>
        <translation>Préparations à faire ou à refaire</translation>
    </message>
    <message>
        <source>No longer to do</source>
        <translation>N’est plus à faire</translation>
    </message>
    <message>
        <source>Stays as it is laid</source>
        <translation>Reste tel que posé</translation>
    </message>
    <message>
        <source>Why this plan</source>
        <translation>Pourquoi ce plan</translation>
    </message>
    <message>
        <source>What was answered</source>
        <translation>Réponses données</translation>
    </message>
</context>
<context>
    <name>strandbench::ReplayScreen</name>
    <message>
        <source>Practice panel</source>
        <translation>Panneau d’exercice</translation>
    </message>
    <message>
        <source>What you did, below the model answer</source>
        <translation>Ce qui a été fait, sous le corrigé</translation>
    </message>
    <message>
        <source>Back to the marks</source>
        <translation>Retour à la correction</translation>
    </message>
    <message>
        <source>model</source>
        <translation>corrigé</translation>
    </message>
    <message>
        <source>you</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>le vôtre</translation>
    </message>
    <message>
        <source>edges clear</source>
        <translation>bords dégagés</translation>
    </message>
    <message>
        <source>gelled</source>
        <translation>pris</translation>
    </message>
    <message>
        <source>The model answer stops here: nothing is mixed.</source>
        <translation>Le corrigé s’arrête ici&#xa0;: rien n’est mélangé.</translation>
    </message>
    <message>
        <source>You stopped here: nothing was mixed.</source>
        <translation>Arrêt décidé ici&#xa0;: rien n’a été mélangé.</translation>
    </message>
    <message>
        <source>From the first step on. Edges and gel of your batches are marked below.</source>
        <translation>Depuis la première étape. Bords et prise des mélanges faits, marqués dessous.</translation>
    </message>
</context>
<context>
    <name>strandbench::Ribbon</name>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>No sound</source>
        <translation>Sans son</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpAssumptionScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Réglages poste</translation>
    </message>
    <message>
        <source>tap to key it in</source>
        <translation>toucher pour saisir</translation>
    </message>
    <message>
        <source>A published figure; change it for another material.</source>
        <translation>Valeur publiée&#xa0;; la changer pour une autre matière.</translation>
    </message>
    <message>
        <source>Ours: no source.</source>
        <translation>De nous&#xa0;: sans source.</translation>
    </message>
    <message>
        <source>Allowed: %1. %2 New plans and clocks go by it; what runs keeps its times.</source>
        <translation>Admis : %1. %2 Vaut pour les nouveaux plans et chronos ; ce qui court garde ses temps.</translation>
    </message>
    <message>
        <source>Back to default</source>
        <translation>Valeur d’origine</translation>
    </message>
    <message>
        <source>Key in the figure</source>
        <translation>Saisir la valeur</translation>
    </message>
    <message>
        <source>Change the figure, or put the default back</source>
        <translation>Changer la valeur, ou remettre celle d’origine</translation>
    </message>
    <message>
        <source>Take this figure</source>
        <translation>Garder cette valeur</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>La laisser</translation>
    </message>
    <message>
        <source>%1’s own: %2</source>
        <extracomment>%1 is a person, %2 a rate: &quot;Mara’s own: 38 g/min&quot;</extracomment>
        <translation>Celui de %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>the last %1 batches: %2 to %3</source>
        <translation>%1 derniers mélanges&#xa0;: %2 à %3</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpAssumptionsScreen</name>
    <message>
        <source>ours: no source; published: from a table</source>
        <translation>de nous&#xa0;: sans source&#xa0;; publié&#xa0;: d’un tableau</translation>
    </message>
    <message>
        <source>Tap an assumption to change it</source>
        <translation>Toucher une hypothèse à changer</translation>
    </message>
    <message>
        <source>%1, was %2</source>
        <extracomment>a row of the assumptions that was changed: &quot;60 s, was 45 s&quot;</extracomment>
        <translation>%1 (avant : %2)</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publié</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>de nous</translation>
    </message>
    <message>
        <source>on each sheet</source>
        <translation>sur chaque fiche</translation>
    </message>
    <message>
        <source>in each step</source>
        <translation>à chaque étape</translation>
    </message>
    <message>
        <source>Hardener for a length of bead: the nozzle’s</source>
        <translation>Durcisseur par longueur de cordon&#xa0;: celui de la buse</translation>
    </message>
    <message>
        <source>Hands-on times</source>
        <translation>Temps manuels</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpBenchScreen</name>
    <message>
        <source>Set up the bench</source>
        <translation>Régler le poste</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nuit</translation>
    </message>
    <message>
        <source>Answers for</source>
        <translation>Réponses pour</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Main droite</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Main gauche</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Animation</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Complète</translation>
    </message>
    <message>
        <source>In steps</source>
        <translation>Par étapes</translation>
    </message>
    <message>
        <source>Foot switch</source>
        <translation>Pédale</translation>
    </message>
    <message>
        <source>Any key</source>
        <translation>Toute touche</translation>
    </message>
    <message>
        <source>One key</source>
        <translation>Une touche</translation>
    </message>
    <message>
        <source>Press now</source>
        <translation>Appuyer</translation>
    </message>
    <message>
        <source>Press the foot switch now</source>
        <translation>Appuyer maintenant sur la pédale</translation>
    </message>
    <message>
        <source>This key has no name of its own.</source>
        <translation>Cette touche n’a pas de nom propre.</translation>
    </message>
    <message>
        <source>Set the foot switch to send another one.</source>
        <translation>Régler la pédale pour en envoyer une autre.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentBase</name>
    <message>
        <source>Scale</source>
        <translation>Balance</translation>
    </message>
    <message>
        <source>Thermo-hygrometer</source>
        <translation>Thermo-hygromètre</translation>
    </message>
    <message>
        <source>Bench set-up</source>
        <translation>Réglages poste</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentTextScreen</name>
    <message>
        <source>Write the line with names in braces</source>
        <translation>Écrire la ligne, les noms entre accolades</translation>
    </message>
    <message>
        <source>Write the path of the port</source>
        <translation>Écrire le chemin du port</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Le prendre</translation>
    </message>
    <message>
        <source>A path begins with a slash.</source>
        <translation>Un chemin commence par une barre oblique.</translation>
    </message>
    <message>
        <source>Such as /dev/ttyUSB0.</source>
        <translation>Comme /dev/ttyUSB0.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpInstrumentsScreen</name>
    <message>
        <source>no line has come yet</source>
        <translation>aucune ligne encore</translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation>lit %1</translation>
    </message>
    <message>
        <source>does not fit the line</source>
        <translation>ne suit pas la ligne</translation>
    </message>
    <message>
        <source>Connect the scale</source>
        <translation>Brancher la balance</translation>
    </message>
    <message>
        <source>Connect the thermo-hygrometer</source>
        <translation>Brancher le thermo-hygromètre</translation>
    </message>
    <message>
        <source>none: all is keyed in</source>
        <translation>aucun&#xa0;: tout est saisi</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>pas encore choisi</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Port</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Pattern of a line</source>
        <translation>Modèle de ligne</translation>
    </message>
    <message>
        <source>Calibrate the bead</source>
        <translation>Étalonner le cordon</translation>
    </message>
    <message>
        <source>No line has come yet.</source>
        <translation>Aucune ligne n’est encore arrivée.</translation>
    </message>
    <message>
        <source>Last line: %1</source>
        <translation>Dernière ligne&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpNameScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Write the new name</source>
        <translation>Écrire le nouveau nom</translation>
    </message>
    <message>
        <source>Put it on the list</source>
        <translation>Ajouter à la liste</translation>
    </message>
    <message>
        <source>The name is empty.</source>
        <translation>Le nom est vide.</translation>
    </message>
    <message>
        <source>Write 1 to %1 characters.</source>
        <translation>Écrire 1 à %1 caractères.</translation>
    </message>
    <message>
        <source>%1 is on the list already.</source>
        <translation>%1 est déjà dans la liste.</translation>
    </message>
    <message>
        <source>Write it so that the two can be told apart.</source>
        <translation>Écrire un nom qui les distingue.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPatternScreen</name>
    <message>
        <source>Which pattern fits its lines?</source>
        <translation>Quel modèle suit ses lignes&#xa0;?</translation>
    </message>
    <message>
        <source>Write one, or change it</source>
        <translation>En écrire un, ou le changer</translation>
    </message>
    <message>
        <source>No line has come yet.</source>
        <translation>Aucune ligne n’est encore arrivée.</translation>
    </message>
    <message>
        <source>Last line: %1</source>
        <translation>Dernière ligne&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPeopleScreen</name>
    <message>
        <source>Who works here?</source>
        <translation>Qui travaille ici&#xa0;?</translation>
    </message>
    <message>
        <source>at the bench</source>
        <translation>au poste</translation>
    </message>
    <message>
        <source>Add a name</source>
        <translation>Ajouter un nom</translation>
    </message>
    <message>
        <source>%1 names are the most</source>
        <translation>%1 noms au plus</translation>
    </message>
    <message>
        <source>Take a name off the list</source>
        <translation>Ôter un nom de la liste</translation>
    </message>
    <message>
        <source>Take %1 off the list</source>
        <translation>Ôter %1 de la liste</translation>
    </message>
    <message>
        <source>tap a name first</source>
        <translation>toucher un nom</translation>
    </message>
    <message>
        <source>the last name stays</source>
        <translation>le dernier nom reste</translation>
    </message>
    <message>
        <source>hold 1 s; what is logged keeps the name</source>
        <translation>tenir 1&#xa0;s&#xa0;; le journal garde le nom</translation>
    </message>
    <message>
        <source>Supervisor’s PIN</source>
        <translation>Code du chef d’atelier</translation>
    </message>
    <message>
        <source>set: change it</source>
        <translation>fixé : le changer</translation>
    </message>
    <message>
        <source>not set yet</source>
        <translation>pas encore fixé</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpPortScreen</name>
    <message>
        <source>Where is it plugged in?</source>
        <translation>Où est-il branché&#xa0;?</translation>
    </message>
    <message>
        <source>None: all is keyed in</source>
        <translation>Aucun&#xa0;: tout est saisi</translation>
    </message>
    <message>
        <source>Write its path</source>
        <translation>Écrire son chemin</translation>
    </message>
    <message>
        <source>No serial port is found on this machine now.</source>
        <translation>Aucun port série trouvé sur cette machine.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpRecordScreen</name>
    <message>
        <source>By hand</source>
        <translation>À la main</translation>
    </message>
    <message>
        <source>How is the record kept safe?</source>
        <translation>Comment le journal est-il gardé&#xa0;?</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Répertoire sauvegardes</translation>
    </message>
    <message>
        <source>none yet: a stick is best</source>
        <translation>aucun encore&#xa0;: une clé est idéale</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Sauvegarder</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Fréquence</translation>
    </message>
    <message>
        <source>How many stay</source>
        <translation>Combien restent</translation>
    </message>
    <message>
        <source>Check the log</source>
        <translation>Vérifier</translation>
    </message>
    <message>
        <source>Bring in a log</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>of another bench</source>
        <translation>d’un autre poste</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Restaurer</translation>
    </message>
    <message>
        <source>from a backup</source>
        <translation>une sauvegarde</translation>
    </message>
    <message>
        <source>choose a folder first</source>
        <translation>répertoire d’abord</translation>
    </message>
    <message>
        <source>newest: %1</source>
        <translation>dernière&#xa0;: %1</translation>
    </message>
    <message>
        <source>none in this session yet</source>
        <translation>aucune cette session</translation>
    </message>
    <message>
        <source>every entry, by its hash</source>
        <translation>chaque entrée, par hachage</translation>
    </message>
    <message>
        <source>%1: it holds, %2 entries</source>
        <translation>%1&#xa0;: intact, %2 entrées</translation>
    </message>
    <message>
        <source>one moment …</source>
        <translation>un instant…</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpScreen</name>
    <message>
        <source>Bench set-up</source>
        <translation>Réglages poste</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Poste</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Sound and glass</source>
        <translation>Son et écran</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>Hypothèses</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>next part of the set-up</source>
        <translation>suite des réglages</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Page avant</translation>
    </message>
    <message>
        <source>Page after</source>
        <translation>Page après</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Product sheets</source>
        <translation>Fiches produit</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSheetsScreen</name>
    <message>
        <source>What the fillers of this shop are</source>
        <translation>Les mastics de cet atelier</translation>
    </message>
    <message>
        <source>Type in a sheet</source>
        <translation>Saisir une fiche</translation>
    </message>
    <message>
        <source>Read one from a file</source>
        <translation>En lire une d’un fichier</translation>
    </message>
    <message>
        <source>demo sheet</source>
        <translation>fiche de démo</translation>
    </message>
    <message numerus="yes">
        <source>%n version(s)</source>
        <translation>
            <numerusform>%n version</numerusform>
            <numerusform>%n versions</numerusform>
        </translation>
    </message>
    <message>
        <source>laid aside</source>
        <translation>écartée</translation>
    </message>
    <message>
        <source>Only demo sheets yet: type in your own</source>
        <translation>Fiches inventées seulement : saisir celles de l’atelier</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSoundScreen</name>
    <message>
        <source>Test the speaker and the size of the glass</source>
        <translation>Tester le haut-parleur et la taille de l’écran</translation>
    </message>
    <message>
        <source>Sound test</source>
        <translation>Essai du son</translation>
    </message>
    <message>
        <source>three rising tones</source>
        <translation>trois tons montants</translation>
    </message>
    <message>
        <source>Calibrate the glass</source>
        <translation>Calibrer l’écran</translation>
    </message>
    <message>
        <source>with a bank card</source>
        <translation>par carte bancaire</translation>
    </message>
    <message>
        <source>This bench was started without sound.</source>
        <translation>Ce poste a démarré sans le son.</translation>
    </message>
    <message>
        <source>Go by the glass alone.</source>
        <translation>Se fier au seul écran.</translation>
    </message>
    <message>
        <source>Not tested since the set-up was opened.</source>
        <translation>Pas essayé depuis l’ouverture des réglages.</translation>
    </message>
    <message>
        <source>Sound is never the only alarm: what the glass shows counts, heard or not.</source>
        <translation>Le son n’est jamais la seule alarme&#xa0;: l’écran compte, entendu ou non.</translation>
    </message>
    <message>
        <source>Heard it</source>
        <translation>Entendu</translation>
    </message>
    <message>
        <source>Heard nothing</source>
        <translation>Rien entendu</translation>
    </message>
    <message>
        <source>Heard: the speaker works.</source>
        <translation>Entendu&#xa0;: le haut-parleur marche.</translation>
    </message>
    <message>
        <source>Sound only adds to what the glass shows.</source>
        <translation>Le son complète seulement l’écran.</translation>
    </message>
    <message>
        <source>The device played it, but nobody heard it.</source>
        <translation>L’appareil l’a joué, mais personne ne l’a entendu.</translation>
    </message>
    <message>
        <source>Look at plug, switch and volume of the speaker and test again. Until then go by the glass alone.</source>
        <translation>Vérifier prise, bouton et volume du haut-parleur, puis réessayer. D’ici là, se fier au seul écran.</translation>
    </message>
    <message>
        <source>Playing. Listen.</source>
        <translation>Lecture. Écouter.</translation>
    </message>
    <message>
        <source>Go by the glass alone until it is mended: no alarm will sound.</source>
        <translation>Se fier au seul écran jusqu’à réparation&#xa0;: aucune alarme ne sonnera.</translation>
    </message>
    <message>
        <source>It says: %1.</source>
        <translation>Il indique&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The device says that it played. Heard it?</source>
        <translation>L’appareil dit l’avoir joué. Entendu&#xa0;?</translation>
    </message>
    <message>
        <source>No sound here: the sound library is missing.</source>
        <translation>Pas de son ici&#xa0;: la bibliothèque son manque.</translation>
    </message>
    <message>
        <source>No sound here: no sound device opens.</source>
        <translation>Pas de son ici&#xa0;: aucun appareil ne s’ouvre.</translation>
    </message>
    <message>
        <source>Not played: the sound device opened and then failed.</source>
        <translation>Non joué&#xa0;: l’appareil s’est ouvert, puis a échoué.</translation>
    </message>
</context>
<context>
    <name>strandbench::SetUpSpeedScreen</name>
    <message>
        <source>How fast does it send? See its manual</source>
        <translation>À quelle vitesse envoie-t-il&#xa0;? Voir sa notice</translation>
    </message>
    <message>
        <source>bit/s</source>
        <translation>bit/s</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Trame</translation>
    </message>
</context>
<context>
    <name>strandbench::SheetScreen</name>
    <message>
        <source>Choose where the job sheet goes</source>
        <translation>Choisir où va la feuille de travail</translation>
    </message>
    <message>
        <source>This record cannot be read.</source>
        <translation>Cet historique est illisible.</translation>
    </message>
</context>
<context>
    <name>strandbench::SkillsScreen</name>
    <message>
        <source>Nobody named</source>
        <translation>Sans nom</translation>
    </message>
    <message numerus="yes">
        <source>%n panel(s) worked</source>
        <translation>
            <numerusform>%n panneau fait</numerusform>
            <numerusform>%n panneaux faits</numerusform>
        </translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Sur papier</translation>
    </message>
    <message>
        <source>To a panel</source>
        <translation>Vers un panneau</translation>
    </message>
    <message>
        <source>No practice panel was worked yet. Each one that is, counts towards these skills.</source>
        <translation>Aucun panneau d’exercice n’a encore été travaillé. Chacun compte pour ces compétences.</translation>
    </message>
</context>
<context>
    <name>strandbench::StockListScreen</name>
    <message>
        <source>%1 left</source>
        <translation>reste %1</translation>
    </message>
    <message>
        <source>open since %1</source>
        <extracomment>%1 is a day</extracomment>
        <translation>ouvert depuis %1</translation>
    </message>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n non ouvert</numerusform>
            <numerusform>%n non ouverts</numerusform>
        </translation>
    </message>
    <message>
        <source>Stock of filler and hardener</source>
        <translation>Stock de mastic et de durcisseur</translation>
    </message>
    <message>
        <source>Tap a lot, or scan it</source>
        <translation>Toucher un lot ou le scanner</translation>
    </message>
    <message>
        <source>Book in a package</source>
        <translation>Entrer un emballage</translation>
    </message>
    <message>
        <source>Nothing is on the shelf yet. Book in what stands there: from then on each batch is taken off, and what runs short, out of date or dry is told with the plan.</source>
        <translation>Rien n’est encore entré. Entrer ce qui est là : ensuite chaque mélange est déduit, et ce qui manque, périme ou sèche est dit avec le plan.</translation>
    </message>
    <message>
        <source>Reorder list</source>
        <translation>Liste à commander</translation>
    </message>
    <message numerus="yes">
        <source>%n product(s) to reorder</source>
        <translation>
            <numerusform>%n produit à commander</numerusform>
            <numerusform>%n produits à commander</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing to reorder</source>
        <translation>rien à commander</translation>
    </message>
    <message>
        <source>ended: %1</source>
        <translation>fini&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>strandbench::StockLotNumberScreen</name>
    <message>
        <source>Key in or scan its lot</source>
        <translation>Saisir ou scanner son lot</translation>
    </message>
    <message>
        <source>This is its lot</source>
        <translation>C’est son lot</translation>
    </message>
</context>
<context>
    <name>strandbench::StockLotScreen</name>
    <message>
        <source>Ended: %1</source>
        <translation>Fini&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>reste %1</translation>
    </message>
    <message>
        <source>Book in more of it</source>
        <translation>En entrer d’autres</translation>
    </message>
    <message numerus="yes">
        <source>%n unopened</source>
        <translation>
            <numerusform>%n non ouvert</numerusform>
            <numerusform>%n non ouverts</numerusform>
        </translation>
    </message>
    <message>
        <source>open since %1</source>
        <extracomment>%1 is a day</extracomment>
        <translation>ouvert depuis %1</translation>
    </message>
    <message>
        <source>A package: %1</source>
        <translation>Un emballage&#xa0;: %1</translation>
    </message>
    <message>
        <source>Good until %1, as printed</source>
        <translation>Bon jusqu’au %1, imprimé</translation>
    </message>
    <message>
        <source>Good until %1, by the sheet’s months</source>
        <translation>Bon jusqu’au %1, selon les mois de la fiche</translation>
    </message>
    <message>
        <source>The open one until %1</source>
        <translation>L’ouvert jusqu’au %1</translation>
    </message>
    <message>
        <source>Open the next</source>
        <translation>Ouvrir le suivant</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>Compter</translation>
    </message>
    <message>
        <source>stock-take</source>
        <translation>inventaire</translation>
    </message>
    <message>
        <source>More or less</source>
        <translation>Plus ou moins</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>corriger</translation>
    </message>
    <message>
        <source>End this tube</source>
        <translation>Finir ce tube</translation>
    </message>
    <message>
        <source>End this tub</source>
        <translation>Finir ce pot</translation>
    </message>
    <message>
        <source>skin, hard, empty</source>
        <translation>peau, dur, vide</translation>
    </message>
    <message>
        <source>From the cold</source>
        <translation>Vient du froid</translation>
    </message>
    <message>
        <source>or the heat</source>
        <translation>ou du chaud</translation>
    </message>
    <message>
        <source>Probe it</source>
        <translation>Sonder</translation>
    </message>
    <message>
        <source>its middle</source>
        <translation>à cœur</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Ce qui a changé</translation>
    </message>
    <message>
        <source>Test pat</source>
        <translation>Galette d’essai</translation>
    </message>
    <message>
        <source>tried</source>
        <translation>essayé</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
</context>
<context>
    <name>strandbench::StockMovesScreen</name>
    <message>
        <source>What changed, the newest first</source>
        <translation>Ce qui a changé, le plus récent d’abord</translation>
    </message>
    <message>
        <source>%1: %2, %3 left</source>
        <extracomment>%1 is what happened, %2 and %3 are masses: &quot;Batch of job 4421: − 43.0 g, 620 g left&quot;</extracomment>
        <translation>%1&#xa0;: %2, reste %3</translation>
    </message>
    <message>
        <source>Every repair of this lot</source>
        <translation>Chaque réparation de ce lot</translation>
    </message>
</context>
<context>
    <name>strandbench::StockNotesScreen</name>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message numerus="yes">
        <source>! %n to mind</source>
        <translation>
            <numerusform>! %n à voir</numerusform>
            <numerusform>! %n à voir</numerusform>
        </translation>
    </message>
    <message>
        <source>in order</source>
        <translation>en ordre</translation>
    </message>
    <message>
        <source>What the shelf says of this plan</source>
        <translation>Ce que dit le stock de ce plan</translation>
    </message>
    <message>
        <source>Nothing is to be told of the lots in the hand. Of lots that were never booked in or counted nothing is known.</source>
        <translation>Rien à dire des lots en main. Des lots jamais entrés ni comptés, on ne sait rien.</translation>
    </message>
    <message>
        <source>To the stock</source>
        <translation>Au stock</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Retour au plan</translation>
    </message>
</context>
<context>
    <name>strandbench::TimelineScreen</name>
    <message>
        <source>Planned and done</source>
        <translation>Prévu et fait</translation>
    </message>
    <message>
        <source>Section of the repair</source>
        <translation>Coupe de la réparation</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Tout le travail</translation>
    </message>
    <message>
        <source>Mix to sanding</source>
        <translation>Du mélange au ponçage</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>told</source>
        <translation>noté</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>a part of the work and how long it took</extracomment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>strandbench::TodayScreen</name>
    <message>
        <source>Tap a job to see its record</source>
        <translation>Toucher un dossier&#xa0;: historique</translation>
    </message>
    <message>
        <source>A record that cannot be read</source>
        <translation>Un historique illisible</translation>
    </message>
    <message>
        <source>Hardener lots</source>
        <translation>Lots de durcisseur</translation>
    </message>
    <message>
        <source>signed off</source>
        <translation>visé</translation>
    </message>
    <message>
        <source>to sign off</source>
        <translation>à viser</translation>
    </message>
    <message>
        <source>This bench</source>
        <translation>Ce poste</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies): clocks, refused acts, PIN</source>
        <translation>
            <numerusform>%n entrée : horloges, actes refusés, code</numerusform>
            <numerusform>%n entrées : horloges, actes refusés, code</numerusform>
        </translation>
    </message>
    <message>
        <source>Look for</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>a job, a lot, a word of any day</source>
        <translation>dossier, lot ou mot de tout jour</translation>
    </message>
    <message>
        <source>Look through</source>
        <translation>Examiner</translation>
    </message>
    <message>
        <source>sign off, return, figures</source>
        <translation>viser, renvoyer, chiffres</translation>
    </message>
    <message>
        <source>Nothing was worked on today. Every repair that is, stands here with its record.</source>
        <translation>Rien n’a été travaillé aujourd’hui. Chaque réparation travaillée est ici avec son historique.</translation>
    </message>
    <message>
        <source>Take in a panel</source>
        <translation>Nouveau panneau</translation>
    </message>
    <message>
        <source>job number and panel</source>
        <translation>numéro de dossier et panneau</translation>
    </message>
    <message>
        <source>No repair today</source>
        <translation>Aucune réparation aujourd’hui</translation>
    </message>
</context>
<context>
    <name>strandbench::TroubleWindow</name>
    <message>
        <source>The log cannot be opened</source>
        <translation>Le journal ne s’ouvre pas</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stop</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Fermer le programme</translation>
    </message>
    <message>
        <source>This bench is in use</source>
        <translation>Ce poste est occupé</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Look only</source>
        <translation>Regarder seulement</translation>
    </message>
    <message>
        <source>The log is of an older version</source>
        <translation>Le journal est d’une version antérieure</translation>
    </message>
    <message>
        <source>Save what holds</source>
        <translation>Sauver l’intact</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurer</translation>
    </message>
    <message>
        <source>Bring it up</source>
        <translation>Mettre à jour</translation>
    </message>
    <message>
        <source>One moment …</source>
        <translation>Un instant…</translation>
    </message>
    <message>
        <source>Nothing could be saved: %1</source>
        <translation>Rien n’a pu être sauvé&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n entries that hold are saved in %1.</source>
        <translation>
            <numerusform>%n entrée intacte est sauvée dans %1.</numerusform>
            <numerusform>%n entrées intactes sont sauvées dans %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more can be read and stand as text beside it.</source>
        <translation>
            <numerusform>%n autre se lit et figure en texte à côté.</numerusform>
            <numerusform>%n autres se lisent et figurent en texte à côté.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>strandbench::VapourScreen</name>
    <message>
        <source>A reason to ventilate, never a clearance</source>
        <translation>Une raison de ventiler, jamais un feu vert</translation>
    </message>
    <message>
        <source>Beside the panel it is more. A measurement, the safety data sheet and local codes come first.</source>
        <translation>Près du panneau il y en a plus. Une mesure, la fiche de données de sécurité et les règles locales passent d’abord.</translation>
    </message>
    <message>
        <source>now %1; highest mean of 15 min %2, of 8 h %3</source>
        <translation>maintenant %1 ; moyenne la plus haute sur 15 min %2, sur 8 h %3</translation>
    </message>
    <message>
        <source>Nothing was mixed or wiped down here in the last 24 hours. What else gives off vapour is not known.</source>
        <translation>Rien n’a été mélangé ni essuyé au solvant ici ces dernières 24 heures. Ce qui dégage d’autres vapeurs n’est pas connu.</translation>
    </message>
    <message>
        <source>Together at most %1 of the OSHA PEL of a mixture.</source>
        <translation>Ensemble, au plus %1 de la PEL OSHA d’un mélange.</translation>
    </message>
    <message>
        <source>Reckoned for %1 of well-mixed air that changes %2 times an hour: assumptions, see bench set-up.</source>
        <translation>Calculé pour %1 d’air bien mélangé, renouvelé %2 fois par heure&#xa0;: hypothèses, voir réglages poste.</translation>
    </message>
    <message>
        <source>Styrene from what worked-in resin gives off to what gel coat does, by 40 CFR 63 VVVV Table 3; none was found for filler. Solvent: all of it.</source>
        <translation>Styrène&#xa0;: entre ce que dégagent une résine travaillée et un gel coat, selon 40 CFR 63 VVVV table 3&#xa0;; rien trouvé pour le mastic. Solvant&#xa0;: tout.</translation>
    </message>
    <message>
        <source>Counted: batches, test pats and wiping down told here in the last 24 hours. Not guide coat, lay-up resin or other work.</source>
        <translation>Compté&#xa0;: mélanges, galettes d’essai et essuyages notés ici ces dernières 24 heures. Pas&#xa0;: témoin, résine de stratification, autres travaux.</translation>
    </message>
    <message numerus="yes">
        <source>%n batch(es) whose sheet is not loaded: not counted.</source>
        <translation>
            <numerusform>%n mélange dont la fiche n’est pas enregistrée : non compté.</numerusform>
            <numerusform>%n mélanges dont la fiche n’est pas enregistrée : non comptés.</numerusform>
        </translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
</context>
<context>
    <name>strandbench::WhyScreen</name>
    <message>
        <source>Why %1</source>
        <translation>Pourquoi %1</translation>
    </message>
    <message>
        <source>Why none of the others</source>
        <translation>Pourquoi pas les autres</translation>
    </message>
    <message>
        <source>Back to the plan</source>
        <translation>Retour au plan</translation>
    </message>
</context>
</TS>
