package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.text.selection.SelectionContainer
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.min
import drawwell.surface.CardScreen
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.AddRow
import drawwell.ui.parts.Ground
import drawwell.ui.parts.PageScreen
import drawwell.ui.parts.Pane
import drawwell.ui.parts.Rounded
import drawwell.ui.parts.Words
import drawwell.ui.pictures.MatrixPicture

/** A card to be handed on: the code to be scanned, the words to compare, the same as a line. */
@Composable
internal fun CardView(pane: Pane, card: CardScreen) {
    val lettering = LocalLettering.current
    BoxWithConstraints(Modifier.fillMaxSize()) {
        // The code and the words are seen at once where there is room for both.
        val side = min(maxWidth - Measures.margin * 2, maxHeight * CODE)
        PageScreen(pane) {
            card.lines.forEach { Words(it, lettering.body) }
            Box(Modifier.fillMaxWidth().padding(vertical = Measures.apart), Alignment.Center) {
                MatrixPicture(card.matrix, card.spoken, side)
            }
            Words(card.wordsLabel, lettering.label, soft = true)
            SelectionContainer { Words(card.words, lettering.headline, Modifier.semantics { testTag = "card-words" }) }
            AddRow(card.actions, pane.send, Modifier.padding(top = Measures.apart))
            Ground(LocalColours.current.sheet, Modifier.fillMaxWidth().padding(top = Measures.apart), Rounded) {
                Column(Modifier.padding(horizontal = 14.dp, vertical = 12.dp), Arrangement.spacedBy(4.dp)) {
                    Words(card.lineLabel, lettering.label, soft = true)
                    SelectionContainer { Words(card.line, lettering.label, Modifier.semantics { testTag = "card-line" }) }
                }
            }
        }
    }
}

/** How much of the height the code takes at most. */
private const val CODE = 0.54f
