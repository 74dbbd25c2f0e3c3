package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.ShelfBoard
import drawwell.surface.ShelfBottle
import drawwell.surface.ShelfPicture
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.Measures
import drawwell.ui.parts.OneLine
import drawwell.ui.parts.Words

/** Milk that is kept, a board for each place; what lapses first stands first. */
@Composable
internal fun ShelfPictureView(shelf: ShelfPicture, modifier: Modifier = Modifier) {
    val lettering = LocalLettering.current
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart)) {
        Column(
            Modifier.fillMaxWidth().clearAndSetSemantics {
                contentDescription = shelf.spoken
                testTag = "shelf"
            },
            Arrangement.spacedBy(Measures.apart),
        ) {
            shelf.boards.forEach { Board(it) }
        }
        if (shelf.legend.isNotEmpty()) Words(shelf.legend, lettering.tick, soft = true)
    }
}

@OptIn(ExperimentalLayoutApi::class)
@Composable
private fun Board(board: ShelfBoard) {
    val lettering = LocalLettering.current
    val edge = LocalColours.current.page.edge
    Column(Modifier.fillMaxWidth()) {
        FlowRow(Modifier.fillMaxWidth(), Arrangement.spacedBy(BETWEEN), Arrangement.spacedBy(BETWEEN)) {
            board.bottles.forEach { Bottle(it) }
            if (board.more.isNotEmpty()) {
                Box(Modifier.height(TALL), Alignment.BottomStart) { Words(board.more, lettering.tick, soft = true) }
            }
        }
        Canvas(Modifier.fillMaxWidth().height(PLANK)) { drawRect(edge) }
        Words(board.label, lettering.label, Modifier.padding(top = 2.dp), soft = true)
    }
}

@Composable
private fun Bottle(bottle: ShelfBottle) {
    val colours = LocalColours.current
    Column(Modifier.width(WIDE), horizontalAlignment = Alignment.CenterHorizontally) {
        OneLine(bottle.label, LocalLettering.current.tick, soft = bottle.past)
        Canvas(Modifier.size(WIDE, TALL)) { bottle(bottle, colours) }
    }
}

private val WIDE = 34.dp
private val TALL = 52.dp
private val BETWEEN = 10.dp
private val PLANK = 2.dp
