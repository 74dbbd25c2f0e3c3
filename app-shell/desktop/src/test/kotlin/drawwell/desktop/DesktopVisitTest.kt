package drawwell.desktop

import drawwell.ui.VisitContract

class DesktopVisitTest : VisitContract() {
    override fun typefaces() = DesktopTypefaces.load()
}
