
REM Works through a job: a file of steps, one a line, its words apart by tabs.
REM   open  ADDRESS                       opens a workbook
REM   number SHEET COLUMN ROW NUMBER      types a number, with a decimal point
REM   text SHEET COLUMN ROW TEXT          types a text; an empty one leaves the cell blank
REM   save ADDRESS                        recalculates every formula and saves each sheet with commas
REM   close                               closes the workbook
REM Ends LibreOffice, and leaves beside the job a file that says "done" or what went wrong.

Const EVERYTHING_TYPED = 23
Const COMMAS_QUOTED_TEXTS_FULL_NUMBERS_ALL_SHEETS = "44,34,76,1,,0,true,true,false,false,false,-1"

Sub Work(jobAddress As String)
    Dim files, steps, book, words
    files = createUnoService("com.sun.star.ucb.SimpleFileAccess")
    On Error Goto Failed
    steps = createUnoService("com.sun.star.io.TextInputStream")
    steps.setInputStream(files.openFileRead(jobAddress))
    steps.setEncoding("UTF-8")
    Do While Not steps.isEOF()
        words = Split(steps.readLine(), Chr(9))
        If UBound(words) >= 0 Then
            Select Case words(0)
                Case "open"
                    book = StarDesktop.loadComponentFromURL(words(1), "_blank", 0, Array(Setting("Hidden", True)))
                    book.enableAutomaticCalculation(False)
                Case "number"
                    Spot(book, words).setValue(Val(words(4)))
                Case "text"
                    If words(4) = "" Then
                        Spot(book, words).clearContents(EVERYTHING_TYPED)
                    Else
                        Spot(book, words).setString(words(4))
                    End If
                Case "save"
                    book.calculateAll()
                    book.storeToURL(words(1), Array( _
                        Setting("FilterName", "Text - txt - csv (StarCalc)"), _
                        Setting("FilterOptions", COMMAS_QUOTED_TEXTS_FULL_NUMBERS_ALL_SHEETS)))
                Case "close"
                    book.close(True)
            End Select
        End If
    Loop
    steps.closeInput()
    Leave(files, jobAddress, "done")
    Exit Sub
Failed:
    Leave(files, jobAddress, Error$ & " in line " & Erl)
End Sub

Function Spot(book, words)
    Spot = book.Sheets.getByName(words(1)).getCellByPosition(CLng(words(2)), CLng(words(3)))
End Function

Function Setting(key As String, content)
    Dim made As New com.sun.star.beans.PropertyValue
    made.Name = key
    made.Value = content
    Setting = made
End Function

Sub Leave(files, jobAddress As String, last As String)
    Dim note, address As String
    address = jobAddress & ".done"
    note = createUnoService("com.sun.star.io.TextOutputStream")
    note.setOutputStream(files.openFileWrite(address))
    note.setEncoding("UTF-8")
    note.writeString(last)
    note.closeOutput()
    StarDesktop.terminate()
End Sub
