#include "window/dialogs/help_text.h"

namespace toehold::window {

namespace {

constexpr std::string_view french_method = R"(
<h3>Ce qui est calculé</h3>
<p>Une poussée sur le garde-corps fait basculer la platine du poteau autour de son bord. La terrasse appuie sur ce bord,
les ancrages du côté opposé retiennent la platine, et le couple entre les deux vaut plusieurs fois la poussée. Toehold
calcule la traction et le cisaillement de chaque ancrage pour une poussée de <b>toute</b> direction, suit chaque effort
par les filets, les écrous, les entretoises et les solives jusqu'à leurs appuis, et compare ce qui est demandé (la
sollicitation) à ce qui est disponible (la résistance).</p>
<h3>Trois façons de trouver la traction</h3>
<ul>
<li><b>À la main</b> : le moment divisé par le bras de levier des ancrages tendus au bord de la platine, pour les
poussées d'équerre. Rapide, et aveugle à une poussée en biais, qui tire souvent le plus sur un ancrage d'angle.</li>
<li><b>Platine rigide</b> : la platine reste plane ; le lit ne fait qu'appuyer, les ancrages ne font que tirer.</li>
<li><b>Platine souple</b> : la platine fléchit comme une plaque mince et peut faire levier sur ses ancrages.</li>
</ul>
<p>Les vérifications suivent la méthode choisie dans les bases du détail, avec le lit et les ancrages à la moitié, à une
fois et au double de leur raideur calculée, et avec la charpente qui cède, et retiennent le plus défavorable. Ce qui est
dessiné pendant que la main est sur la feuille ne vaut que pour la raideur nominale ; les vérifications suivent quand la
main se repose.</p>
<h3>Lire la feuille</h3>
<ul>
<li>L'encre rouge est la <b>sollicitation</b>. Le contour gris à côté est la <b>résistance</b> : là où le rouge le
dépasse, la pièce ne tient pas.</li>
<li>Le cadre autour d'une chose est son <b>état</b> : simple si elle tient, épais et doublé si elle cède, interrompu si
rien n'est là pour résister, pointillé si le détail n'en dit pas assez. Le mot est toujours à côté.</li>
<li>La <b>rose</b> montre la traction de chaque ancrage selon la direction de la poussée ; le cercle extérieur est la
plus grande de toutes. 90 degrés est vers l'extérieur.</li>
<li>Les chiffres pâles marqués <i>périmé</i> sont ceux d'un état antérieur du détail.</li>
<li>Pendant que l'on glisse un ancrage, un côté de la platine, une entretoise ou la pointe d'une vis, les places où
<b>chaque vérification tient</b> sont teintées et leur bord nommé par ce qui l'y arrête ; le bord est interrompu tant
que le calcul entier ne l'a pas confirmé.</li>
</ul>
<h3>Le verdict</h3>
<ul>
<li><b>SATISFAISANT</b> : chaque vérification tient et rien de nécessaire ne manque.</li>
<li><b>INSUFFISANT</b> : quelque chose cède, n'a rien pour y résister, ou ne peut pas être construit ainsi.</li>
<li><b>INCOMPLET</b> : rien ne cède à notre connaissance, et quelque chose de nécessaire n'est pas décrit.</li>
</ul>
<h3>Mise en garde</h3>
<p>Un garde-corps protège des vies : une personne tombe quand il cède. Toehold aide une personne qui répond du détail et
ne répond pas à sa place. Le code local et l'autorité compétente font foi ; là où la loi demande des plans scellés, un
professionnel agréé doit en prendre la responsabilité. Lisez les hypothèses et les mises en garde de chaque verdict.</p>
)";

constexpr std::string_view french_sources = R"(
<p>Chaque vérification nomme son article dans la liste et à chaque ligne de son calcul. Les éditions suivies :</p>
<table border="0" cellpadding="4">
<tr><td valign="top"><b>Charges sur les garde-corps</b></td><td>IBC et IRC de 2018, 2021 et 2024, selon la base de calcul :
200 lb au sommet, dans toute direction, et hors des maisons d'un ou deux logements 50 ou 20 lb/ft le long du garde-corps ;
ASCE 7-16 ou 7-22 pour les combinaisons.</td></tr>
<tr><td valign="top"><b>Bois et ses fixations</b></td><td>AWC National Design Specification for Wood Construction, NDS
2018 (ASD et LRFD), avec AWC TR12 pour les vides sous la tête de la fixation.</td></tr>
<tr><td valign="top"><b>Acier</b></td><td>AISC 360-16, Specification for Structural Steel Buildings.</td></tr>
<tr><td valign="top"><b>Aluminium</b></td><td>Aluminum Design Manual 2020.</td></tr>
<tr><td valign="top"><b>Dimensions</b></td><td>ASME B18.2.1 (tire-fonds et boulons), B18.6.1 (vis à bois), B18.21.1
(rondelles).</td></tr>
</table>
<p>Là où les pratiques diffèrent, la lecture prudente est retenue, et l'hypothèse est donnée avec ce que l'autre choix
donnerait. Une valeur marquée <i>common practice</i> (pratique courante) n'a pas de norme derrière elle. Une valeur
marquée <i>from memory</i> (de mémoire) attend d'être comparée à sa source et doit être confirmée avant qu'on s'y
fie.</p>
<p>Le niveau d'épreuve de 2,5 fois la charge suit la pratique des essais de chargement selon IBC 1709.3.1.</p>
)";

constexpr std::string_view french_keys = R"(
<h3>Sur la feuille</h3>
<table border="0" cellpadding="3">
<tr><td><b>Tab, Maj+Tab</b></td><td>pièce suivante et précédente ; après la dernière on quitte la feuille</td></tr>
<tr><td><b>Ctrl+Tab</b></td><td>quitter la feuille aussitôt</td></tr>
<tr><td><b>Flèches</b></td><td>déplacer la sélection d'un pas ; avec Maj loin, avec Ctrl finement</td></tr>
<tr><td><b>Suppr</b></td><td>enlever la sélection</td></tr>
<tr><td><b>Échap</b></td><td>annuler le glissement, quitter l'outil ou lâcher la sélection</td></tr>
<tr><td><b>V, H, C, B, P</b></td><td>sélectionner ; ajouter un trou, un coin, une entretoise ; déplacer la
feuille</td></tr>
<tr><td><b>1 2 3 4</b></td><td>plan, coupe, élévation, rose</td></tr>
<tr><td><b>M</b></td><td>le dessin courant seul, puis tous de nouveau</td></tr>
<tr><td><b>+ - 0</b></td><td>plus grand, plus petit, entier</td></tr>
<tr><td><b>[ ] G</b></td><td>tourner la poussée de 5 degrés ; revenir à la poussée déterminante</td></tr>
<tr><td><b>Alt en glissant</b></td><td>sans accrochage</td></tr>
<tr><td><b>Maj en glissant</b></td><td>le long d'un seul axe</td></tr>
</table>
<h3>Dans les vérifications</h3>
<table border="0" cellpadding="3">
<tr><td><b>Haut, Bas</b></td><td>la ligne au-dessus, au-dessous ; sa place se montre sur les dessins</td></tr>
<tr><td><b>Droite ou Entrée, Gauche</b></td><td>ouvrir et fermer le calcul</td></tr>
<tr><td><b>Ctrl+C</b></td><td>copier le calcul comme texte</td></tr>
<tr><td><b>F8</b></td><td>la suivante qui ne tient pas</td></tr>
<tr><td><b>Ctrl+Maj+R</b></td><td>une remarque sur le résultat, gardée avec le détail</td></tr>
</table>
<h3>Dans un graphique</h3>
<table border="0" cellpadding="3">
<tr><td><b>Flèches, Entrée</b></td><td>au point suivant ; montrer son détail. Échap l'abandonne</td></tr>
</table>
<h3>Dans un projet</h3>
<table border="0" cellpadding="3">
<tr><td><b>Haut, Bas</b></td><td>le poteau au-dessus, au-dessous ; il est marqué sur la ligne de garde-corps</td></tr>
<tr><td><b>Entrée, Ctrl+E</b></td><td>ouvrir le pied du poteau, comme copie</td></tr>
<tr><td><b>F5, Maj+F5</b></td><td>examiner à nouveau ; arrêter l'examen</td></tr>
</table>
<h3>Partout</h3>
<table border="0" cellpadding="3">
<tr><td><b>Ctrl+Z, Ctrl+Maj+Z</b></td><td>annuler une étape, la refaire</td></tr>
<tr><td><b>Ctrl+S, Ctrl+Maj+S</b></td><td>enregistrer, enregistrer sous</td></tr>
<tr><td><b>Ctrl+D, Ctrl+M, Ctrl+Maj+A</b></td><td>dupliquer, symétrie, réseau</td></tr>
<tr><td><b>Ctrl+1 à Ctrl+6</b></td><td>pression, platine fléchie, repères, cotes, charpente, où cela tient</td></tr>
<tr><td><b>Ctrl+Alt+1, 2, 3</b></td><td>à la main, rigide, souple</td></tr>
<tr><td><b>F2, F7, F9</b></td><td>dessins, dimensions, graphiques ; Ctrl+F7 cherche aussitôt des dimensions</td></tr>
<tr><td><b>F4, F6</b></td><td>propriétés, examen</td></tr>
<tr><td><b>Ctrl+R</b></td><td>la note de calcul ; les autres documents sont sous Fichier, Documents</td></tr>
<tr><td><b>Ctrl+F</b></td><td>constats, remèdes, hypothèses et mises en garde</td></tr>
<tr><td><b>F1</b></td><td>cette aide</td></tr>
</table>
<p>Les longueurs se tapent comme sur un dessin : <tt>3 3/8</tt>, <tt>3'-0"</tt>, <tt>86 mm</tt>. Un nombre sans unité
compte dans les unités affichées ; le séparateur décimal est le point.</p>
)";

}  // namespace

std::string_view help_text_french(HelpPage page) {
    switch (page) {
        case HelpPage::method:
            return french_method;
        case HelpPage::sources:
            return french_sources;
        case HelpPage::keys:
            return french_keys;
    }
    return {};
}

}  // namespace toehold::window
