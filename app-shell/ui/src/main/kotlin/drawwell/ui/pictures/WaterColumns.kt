package drawwell.ui.pictures

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.LayoutDirection
import androidx.compose.ui.unit.dp
import drawwell.surface.Column as ColumnData
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.OneLine
import drawwell.ui.pictures.Water.ghost
import drawwell.ui.pictures.Water.shaft
import drawwell.ui.pictures.Water.water

/** The columns side by side: left where left is, right where right is, in either hand. */
@Composable
internal fun WaterColumns(columns: List<ColumnData>, modifier: Modifier = Modifier) {
    Sides(modifier) {
        columns.forEach { WaterColumn(it, Modifier.weight(1f)) }
    }
}

/** A row that never turns round. */
@Composable
internal fun Sides(modifier: Modifier = Modifier, content: @Composable androidx.compose.foundation.layout.RowScope.() -> Unit) {
    CompositionLocalProvider(LocalLayoutDirection provides LayoutDirection.Ltr) {
        Row(modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp), content = content)
    }
}

@Composable
private fun WaterColumn(column: ColumnData, modifier: Modifier) {
    val lettering = LocalLettering.current
    Column(
        modifier.clearAndSetSemantics {
            contentDescription = column.spoken
            testTag = "column-${column.part.name.lowercase()}"
        },
        Arrangement.spacedBy(4.dp),
    ) {
        Shaft(column.height, column.ghost, Modifier.weight(1f))
        Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp), Alignment.CenterVertically) {
            OneLine(column.label, lettering.label, soft = true)
            OneLine(column.text, lettering.action)
        }
    }
}

/** One column with its water line, as tall as its place; `held` while a thumb draws it. */
@Composable
internal fun Shaft(height: Float?, ghost: Float?, modifier: Modifier = Modifier, held: Boolean = false) {
    val colours = LocalColours.current
    val risen by rising(height ?: 0f, held)
    Canvas(modifier.fillMaxWidth()) {
        val wall = 1.dp.toPx()
        val area = Rect(Offset(wall, wall), Offset(size.width - wall, size.height - wall))
        shaft(area, colours)
        if (height != null) water(area, risen, colours)
        if (ghost != null) ghost(area, ghost, colours, over = height != null && ghost < risen)
    }
}
